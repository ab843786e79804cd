package holdcurve.inference.ranking;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.common.work.Workers;
import holdcurve.fault.FaultParameter;
import holdcurve.inference.answer.Diagnosis;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.NextStep;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.decision.DecisionRule;
import holdcurve.inference.decision.NextTest;
import holdcurve.inference.evidence.ModelProbabilities;
import holdcurve.inference.explain.CurveBands;
import holdcurve.inference.explain.FallShares;
import holdcurve.inference.explain.FoundApart;
import holdcurve.inference.explain.Grouping;
import holdcurve.inference.explain.PredictiveCheck;
import holdcurve.inference.explain.Reasoning;
import holdcurve.inference.explain.SoundFall;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.inference.prior.LearnedUnknowns;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.part.Seats;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Turns evaluated hypotheses into a ranking for people. */
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
  private final Identifiability alike;
  private final List<EvaluatedHypothesis> evaluated;
  private final long seed;
  private final List<Message> notes;
  private final RateShift rates;
  private final double[] probabilities;
  private final Map<String, Double> byId = new HashMap<>();

  RankingReport(
      Job job,
      JobModel data,
      Identifiability alike,
      List<EvaluatedHypothesis> evaluated,
      long seed,
      RateShift rates,
      List<Message> notes) {
    this.job = job;
    this.data = data;
    this.alike = alike;
    this.evaluated = evaluated;
    this.seed = seed;
    this.rates = rates;
    this.notes = new ArrayList<>(notes);
    probabilities = probabilities(evaluated);
    for (int i = 0; i < evaluated.size(); i++) {
      byId.put(evaluated.get(i).hypothesis().id(), probabilities[i]);
    }
  }

  private static double[] probabilities(List<EvaluatedHypothesis> evaluated) {
    return ModelProbabilities.of(
        evaluated.stream().mapToDouble(EvaluatedHypothesis::logEvidence).toArray(),
        evaluated.stream().mapToDouble(j -> Math.log(j.hypothesis().priorWeight())).toArray());
  }

  /**
   * @param verdictOnly whether to leave out expected curves and books of the fall
   */
  Ranking ranking(boolean verdictOnly, Workers workers) {
    List<Integer> all = IntStream.range(0, evaluated.size()).boxed().toList();
    List<Suspect> suspects =
        new ArrayList<>(
            workers.each(all, this::name, i -> Optional.of(suspect(i, !verdictOnly)), 0.9, 1));
    suspects.sort(Comparator.comparingDouble(Suspect::probability).reversed());
    rates.note(suspects).ifPresent(notes::add);
    List<EvaluatedHypothesis> singles =
        evaluated.stream()
            .filter(j -> j.hypothesis().members().size() == 1)
            .sorted(Comparator.comparingDouble(EvaluatedHypothesis::logPosterior).reversed())
            .toList();
    List<SuspectGroup> groups =
        new Grouping(alike, byId, !job.findings().isEmpty()).groups(singles);
    List<EvaluatedHypothesis> ordered = ordered();
    new FoundApart(data, alike).sentence(singles).map(Message::plain).ifPresent(notes::add);
    FallShares shares = new FallShares(job, ordered, byId, seed);
    List<FallReport> falls = verdictOnly ? List.of() : shares.reports(workers);
    PredictiveCheck misfit = new PredictiveCheck(data, ordered.get(0));
    Diagnosis diagnosis =
        new DecisionRule(
                job,
                new DecisionRule.Evidence(
                    suspects,
                    groups,
                    ordered,
                    misfit,
                    () -> soundFall(verdictOnly ? shares.reports(workers) : falls),
                    () -> nextTest(singles)))
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

  private NextStep nextTest(List<EvaluatedHypothesis> singles) {
    List<Double> chances = singles.stream().map(s -> byId.get(s.hypothesis().id())).toList();
    return new NextTest(job, alike, singles, chances).step();
  }

  private List<EvaluatedHypothesis> ordered() {
    return evaluated.stream()
        .sorted(Comparator.comparingDouble(EvaluatedHypothesis::logPosterior).reversed())
        .toList();
  }

  private Message soundFall(List<FallReport> falls) {
    return new SoundFall(job).sentence(falls);
  }

  /**
   * @param draws possibilities kept of each hypothesis that matters
   */
  List<HypothesisPosterior> posterior(UnknownPriors unknowns, int draws, Workers workers) {
    List<Integer> all = IntStream.range(0, evaluated.size()).boxed().toList();
    List<HypothesisPosterior> posterior =
        new ArrayList<>(
            workers.each(all, this::name, i -> Optional.of(belief(i, unknowns, draws)), 1, 1));
    posterior.sort(Comparator.comparingDouble(HypothesisPosterior::probability).reversed());
    return posterior;
  }

  private HypothesisPosterior belief(int i, UnknownPriors unknowns, int draws) {
    EvaluatedHypothesis one = evaluated.get(i);
    double probability = probabilities[i];
    List<PosteriorDraw> posteriorDraws =
        probability < MATTERS
            ? List.of()
            : one.draws(seed, draws).stream()
                .map(u -> PosteriorDraw.of(job, one.model(), unknowns, u))
                .toList();
    return new HypothesisPosterior(one.hypothesis(), probability, posteriorDraws);
  }

  /** Mean and spread of each unknown that stays with a car, over all hypotheses. */
  LearnedUnknowns learned() {
    Map<LearnedUnknowns.Unknown, LearnedUnknowns.Normal> normals =
        new EnumMap<>(LearnedUnknowns.Unknown.class);
    for (LearnedUnknowns.Unknown unknown : LearnedUnknowns.Unknown.values()) {
      double mean = 0;
      double square = 0;
      for (int i = 0; i < probabilities.length; i++) {
        if (probabilities[i] >= MATTERS) {
          EvaluatedHypothesis one = evaluated.get(i);
          LearnedUnknowns.Normal normal =
              one.model()
                  .latentMap()
                  .latents()
                  .believed(one.posterior().mode(), unknown, one.posterior()::deviation);
          mean += probabilities[i] * normal.middle();
          square +=
              probabilities[i]
                  * (normal.middle() * normal.middle() + normal.deviation() * normal.deviation());
        }
      }
      double all = Arrays.stream(probabilities).filter(p -> p >= MATTERS).sum();
      double middle = mean / all;
      normals.put(
          unknown, new LearnedUnknowns.Normal(middle, Math.sqrt(square / all - middle * middle)));
    }
    return new LearnedUnknowns(normals);
  }

  private String name(int i) {
    return evaluated.get(i).hypothesis().name();
  }

  private Suspect suspect(int i, boolean curves) {
    EvaluatedHypothesis one = evaluated.get(i);
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

  private static Optional<FaultSize> size(EvaluatedHypothesis one) {
    List<FaultParameter> parameters = one.hypothesis().parameters();
    if (parameters.isEmpty()) {
      return Optional.empty();
    }
    int place = one.model().latentMap().latents().parameterIndex(0);
    double deviation = one.posterior().deviation(place);
    Interval value =
        new Interval(
            size(one, place, -HALF_RANGE * deviation),
            size(one, place, 0),
            size(one, place, HALF_RANGE * deviation));
    return Optional.of(new FaultSize(parameters.get(0).name(), parameters.get(0).unit(), value));
  }

  /** Value of the first parameter where its coordinate lies so far from the mode [SI]. */
  private static double size(EvaluatedHypothesis one, int place, double away) {
    double[] u = one.posterior().mode().clone();
    u[place] += away;
    return one.parameter(u, 0);
  }
}
