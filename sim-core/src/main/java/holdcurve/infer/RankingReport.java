package holdcurve.infer;

import holdcurve.attribution.FallReport;
import holdcurve.evidence.Mode;
import holdcurve.evidence.ModelProbabilities;
import holdcurve.fault.FaultParameter;
import holdcurve.job.Job;
import holdcurve.part.Seats;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Turns judged hypotheses into a ranking for people. */
final class RankingReport {
  /** Suspects below this probability get no curves [-]. */
  private static final double CURVES_ABOVE = 0.02;

  /** Hypotheses below this probability are not asked about the future [-]. */
  private static final double MATTERS = 0.002;

  /** Half of the 90 % range of a standard-normal number [-]. */
  private static final double HALF_RANGE =
      new NormalDistribution(null, 0, 1).inverseCumulativeProbability(0.95);

  private final Job job;
  private final JobModel data;
  private final Alikeness alike;
  private final List<Judged> judged;
  private final long seed;
  private final List<Saying> notes;
  private final double[] probabilities;
  private final Map<String, Double> byId = new HashMap<>();

  RankingReport(
      Job job, JobModel data, Alikeness alike, List<Judged> judged, long seed, List<Saying> notes) {
    this.job = job;
    this.data = data;
    this.alike = alike;
    this.judged = judged;
    this.seed = seed;
    this.notes = new ArrayList<>(notes);
    probabilities = probabilities(judged);
    for (int i = 0; i < judged.size(); i++) {
      byId.put(judged.get(i).hypothesis().id(), probabilities[i]);
    }
  }

  private static double[] probabilities(List<Judged> judged) {
    return ModelProbabilities.of(
        judged.stream().mapToDouble(Judged::logEvidence).toArray(),
        judged.stream().mapToDouble(j -> Math.log(j.hypothesis().priorWeight())).toArray());
  }

  /**
   * @param curves whether suspects get their expected curves
   */
  Ranking ranking(boolean curves, Workers workers) {
    List<Integer> all = IntStream.range(0, judged.size()).boxed().toList();
    List<Suspect> suspects =
        new ArrayList<>(
            workers.each(all, this::name, i -> Optional.of(suspect(i, curves)), 0.9, 1));
    suspects.sort(Comparator.comparingDouble(Suspect::probability).reversed());
    List<Judged> singles =
        judged.stream()
            .filter(j -> j.hypothesis().members().size() == 1)
            .sorted(Comparator.comparingDouble(Judged::logPosterior).reversed())
            .toList();
    List<SuspectGroup> groups =
        new Grouping(alike, byId, !job.findings().isEmpty()).groups(singles);
    List<Judged> ordered = ordered();
    new FoundApart(data, alike).sentence(singles).map(Saying::plain).ifPresent(notes::add);
    List<FallReport> falls = new FallShares(job, ordered, byId, seed).reports(workers);
    Misfit misfit = new Misfit(data, ordered.get(0));
    Diagnosis diagnosis =
        new DecisionRule(
                job,
                new DecisionRule.Evidence(
                    suspects, groups, ordered, misfit, soundFall(falls), () -> nextTest(singles)))
            .diagnosis();
    return new Ranking(
        job.title(),
        seed,
        diagnosis,
        suspects,
        groups,
        Seats.TEST_PRESSURE,
        falls,
        new Reasoning(data, ordered, byId, groups).reasons(workers),
        notes);
  }

  private NextStep nextTest(List<Judged> singles) {
    List<Double> chances = singles.stream().map(s -> byId.get(s.hypothesis().id())).toList();
    return new NextTest(job, alike, singles, chances).step();
  }

  private List<Judged> ordered() {
    return judged.stream()
        .sorted(Comparator.comparingDouble(Judged::logPosterior).reversed())
        .toList();
  }

  private Saying soundFall(List<FallReport> falls) {
    return new SoundFall(job).sentence(falls);
  }

  /**
   * @param draws possibilities kept of each hypothesis that matters
   */
  List<Belief> beliefs(UnknownPriors unknowns, int draws, Workers workers) {
    List<Integer> all = IntStream.range(0, judged.size()).boxed().toList();
    List<Belief> beliefs =
        new ArrayList<>(
            workers.each(all, this::name, i -> Optional.of(belief(i, unknowns, draws)), 1, 1));
    beliefs.sort(Comparator.comparingDouble(Belief::probability).reversed());
    return beliefs;
  }

  private Belief belief(int i, UnknownPriors unknowns, int draws) {
    Judged one = judged.get(i);
    double probability = probabilities[i];
    List<Possibility> possibilities =
        probability < MATTERS
            ? List.of()
            : PosteriorDraws.of(one, seed, draws).stream()
                .map(u -> Possibility.of(job, one.model(), unknowns, u))
                .toList();
    return new Belief(one.hypothesis(), probability, possibilities);
  }

  private String name(int i) {
    return judged.get(i).hypothesis().name();
  }

  private Suspect suspect(int i, boolean curves) {
    Judged one = judged.get(i);
    Hypothesis hypothesis = one.hypothesis();
    double probability = probabilities[i];
    return new Suspect(
        hypothesis.id(),
        hypothesis.name(),
        hypothesis.where(),
        probability,
        size(one),
        hypothesis.symptoms(),
        hypothesis.repair(),
        curves && (probability > CURVES_ABOVE || hypothesis.members().isEmpty())
            ? new CurveBands(job, seed).curves(one)
            : List.of());
  }

  private static Optional<FaultSize> size(Judged one) {
    List<FaultParameter> parameters = one.hypothesis().parameters();
    if (parameters.isEmpty()) {
      return Optional.empty();
    }
    Mode mode = one.likelihood().modes().get(0);
    int place = one.model().realisation().latents().sampledPlaceOfFirstParameter();
    double deviation = mode.deviation(place);
    Interval value =
        new Interval(
            size(one, mode, place, -HALF_RANGE * deviation),
            size(one, mode, place, 0),
            size(one, mode, place, HALF_RANGE * deviation));
    return Optional.of(new FaultSize(parameters.get(0).name(), parameters.get(0).unit(), value));
  }

  /** Value of the first parameter where its coordinate lies so far from the mode [SI]. */
  private static double size(Judged one, Mode mode, int place, double away) {
    double[] u = mode.u().clone();
    u[place] += away;
    return one.parameter(u, 0);
  }
}
