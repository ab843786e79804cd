package holdcurve.inference.likelihood;

import holdcurve.inference.data.ReadingSeries;
import holdcurve.inference.data.TestOperations;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.inference.finding.FindingLikelihoods;
import holdcurve.inference.noise.Coarsening;
import holdcurve.inference.noise.ReadingError;
import holdcurve.inference.noise.Scales;
import holdcurve.inference.runup.RunUpLikelihood;
import holdcurve.physics.network.Operation;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What all hypotheses about a job share: its readings ready for the likelihood, and the operation
 * of each test.
 *
 * @param job the job
 * @param series readings of each test
 * @param errors reading error of each test
 * @param operations operation of each test, before clamps
 * @param temperatures what is known of the fuel temperature in each test
 * @param sides what was found out beside the readings
 * @param coarsening how much the readings count in every likelihood
 */
public record JobModel(
    Job job,
    List<ReadingSeries> series,
    List<ReadingError> errors,
    List<Operation> operations,
    List<FuelTemperature> temperatures,
    List<FindingLikelihood> sides,
    Coarsening coarsening) {
  public static JobModel of(Job job) {
    return of(job, Coarsening.of(job));
  }

  public static JobModel of(Job job, Coarsening coarsening) {
    List<ReadingSeries> series = new ArrayList<>();
    List<ReadingError> errors = new ArrayList<>();
    List<Operation> operations = new ArrayList<>();
    for (HoldTest test : job.tests()) {
      ReadingSeries readings = ReadingSeries.of(test.log().hold(), job.gauge());
      series.add(readings);
      errors.add(new ReadingError(readings, coarsening.share(errors.size())));
      operations.add(TestOperations.of(test));
    }
    List<FindingLikelihood> sides =
        new ArrayList<>(
            FindingLikelihoods.of(job).stream().map(FindingLikelihoods.Said::evidence).toList());
    RunUpLikelihood.of(job).ifPresent(sides::add);
    return new JobModel(job, series, errors, operations, temperatures(job), sides, coarsening);
  }

  /** Tests that are still to be done: no readings, only how they would be run. */
  public static JobModel planned(Job job) {
    List<Operation> operations = job.tests().stream().map(TestOperations::of).toList();
    Coarsening coarsening = new Coarsening(Coarsening.power(operations.size(), job.gauge()));
    return new JobModel(
        job, List.of(), List.of(), operations, temperatures(job), List.of(), coarsening);
  }

  private static List<FuelTemperature> temperatures(Job job) {
    return job.tests().stream().map(FuelTemperature::of).toList();
  }

  /** Number of residuals of the readings. */
  public int residualCount() {
    return series.stream().mapToInt(s -> s.time().length).sum();
  }

  /** Number of residuals of all else. */
  public int sideCount() {
    return sides.stream().mapToInt(FindingLikelihood::rows).sum();
  }

  /** Number of unknowns that side evidence has of its own. */
  int sideUnknowns() {
    return sides.stream().mapToInt(FindingLikelihood::unknowns).sum();
  }

  /** Place of the first unknown of some side evidence among those of all. */
  int firstUnknown(FindingLikelihood of) {
    return sides.stream().takeWhile(side -> side != of).mapToInt(FindingLikelihood::unknowns).sum();
  }

  /** What was read before the pump stop, where that speaks; it has the last of the side rows. */
  public Optional<RunUpLikelihood> runUp() {
    return sides.stream()
        .filter(RunUpLikelihood.class::isInstance)
        .map(RunUpLikelihood.class::cast)
        .findFirst();
  }

  /** Tests in which somebody looked at the needle just before the pump stopped. */
  BitSet testsReadBefore() {
    BitSet read = new BitSet();
    IntStream.range(0, job.tests().size())
        .filter(test -> readBefore(test).isPresent())
        .forEach(read::set);
    return read;
  }

  /** What the needle showed just before the pump stopped [Pa gauge]; empty if nobody looked. */
  OptionalDouble readBefore(int test) {
    return runUp().map(runUp -> runUp.justBefore(test)).orElse(OptionalDouble.empty());
  }

  /** Log density of no residual at all, that of readings at its power [nat]. */
  public double logDensityAtZero(Scales scales) {
    double readings = 0;
    for (ReadingError error : errors) {
      readings +=
          error.share() * (error.size() * Math.log(2 * Math.PI) + error.logDeterminant(scales));
    }
    return -0.5 * (coarsening.power() * readings + sideCount() * Math.log(2 * Math.PI));
  }

  /**
   * Residuals in units of their own scatter, one a reading, and side evidence as it is [-].
   *
   * @param residuals of all readings [Pa], then residuals of side evidence [-]
   */
  public double[] whitened(double[] residuals, Scales scales) {
    double[] rows = residuals.clone();
    int place = 0;
    for (ReadingError error : errors) {
      error.whiten(residuals, scales, rows, place);
      for (int i = place; i < place + error.size(); i++) {
        rows[i] *= Math.sqrt(coarsening.power());
      }
      place += error.size();
    }
    return rows;
  }
}
