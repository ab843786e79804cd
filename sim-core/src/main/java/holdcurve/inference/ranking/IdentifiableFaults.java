package holdcurve.inference.ranking;

import holdcurve.common.work.ComputationException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.prior.UnknownPriors;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * Which faults the evidence of a job can speak for. Those that a hold shows always are; one that
 * acts only while fuel flows is where, at some size, what was read before the pump stop lies nearer
 * to it than to a sound circuit, or where a joint that it may wet was found wet. Others would only
 * share probability with what nobody looked at, and take time.
 */
final class IdentifiableFaults {
  /** By how much nearer, as a squared distance in standard deviations [-]. */
  private static final double NEARER = 2;

  /** Sizes of a fault that are tried [standard deviations]. */
  private static final double[] SIZES = {-2, -1, 0, 1, 2};

  /** Likewise of what else a fault has: a pump may deliver well and yet not push hard. */
  private static final double[] OTHERS = {-1.5, -1, -0.5, 0};

  private final JobModel data;
  private final UnknownPriors priors;
  private final double ofSound;
  private final CholeskyDecomposition spread;

  /**
   * @param sensitivities of all residuals of the sound circuit at {@code middle}
   */
  private IdentifiableFaults(
      JobModel data,
      UnknownPriors priors,
      HypothesisModel sound,
      double[] middle,
      double[][] sensitivities) {
    this.data = data;
    this.priors = priors;
    int rows = data.runUp().orElseThrow().rows();
    int first = data.residualCount() + data.sideCount() - rows;
    int columns = sensitivities[0].length;
    double[][] covariance = new double[rows][rows];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < rows; j++) {
        double[] a = sensitivities[first + i];
        double[] b = sensitivities[first + j];
        double sum = IntStream.range(0, columns).mapToDouble(k -> a[k] * b[k]).sum();
        covariance[i][j] = sum + (i == j ? 1 : 0);
      }
    }
    spread = new CholeskyDecomposition(new Array2DRowRealMatrix(covariance));
    ofSound = distance(tail(sound.sideRows(middle)));
  }

  /** Those of a catalogue that the data can speak for. */
  static FaultCatalogue among(FaultCatalogue all, JobModel data, UnknownPriors priors) {
    WetJoints wet = new WetJoints(data.job());
    if (data.runUp().isEmpty()) {
      return all.only(fault -> fault.showsInHold() || wet.speakFor(fault));
    }
    HypothesisModel sound = new HypothesisModel(data, new Hypothesis(List.of(), 1), priors);
    double[] middle = new double[sound.dimension()];
    Optional<IdentifiableFaults> shown =
        sound
            .linear(middle, sound.latentMap().latents().curve())
            .map(
                linear ->
                    new IdentifiableFaults(data, priors, sound, middle, linear.sensitivities()));
    return all.only(
        fault ->
            fault.showsInHold()
                || wet.speakFor(fault)
                || shown.filter(faults -> faults.isNearer(fault)).isPresent());
  }

  private boolean isNearer(LeakFault fault) {
    try {
      return fault.sites(data.job().circuit()).stream().anyMatch(site -> isNearer(fault, site));
    } catch (ComputationException e) {
      return false;
    }
  }

  private boolean isNearer(LeakFault fault, Site site) {
    HypothesisModel model = model(List.of(new Hypothesis.Member(fault, site)));
    double[] others = fault.parameters().size() > 1 ? OTHERS : new double[1];
    return Arrays.stream(others)
        .anyMatch(
            other ->
                Arrays.stream(SIZES)
                    .anyMatch(size -> distance(model, fault, size, other) < ofSound - NEARER));
  }

  private double distance(HypothesisModel model, LeakFault fault, double size, double other) {
    double[] u = new double[model.dimension()];
    for (int k = 0; k < fault.parameters().size(); k++) {
      u[model.latentMap().latents().parameterIndex(k)] = k == 0 ? size : other;
    }
    return distance(tail(model.sideRows(u)));
  }

  /** How far rows lie from nothing; not-a-number where they can't be. */
  private double distance(double[] rows) {
    RealVector away = new ArrayRealVector(rows);
    return away.dotProduct(spread.getSolver().solve(away));
  }

  private double[] tail(double[] rows) {
    return Arrays.copyOfRange(rows, rows.length - spread.getL().getRowDimension(), rows.length);
  }

  private HypothesisModel model(List<Hypothesis.Member> members) {
    return new HypothesisModel(data, new Hypothesis(members, 1), priors);
  }
}
