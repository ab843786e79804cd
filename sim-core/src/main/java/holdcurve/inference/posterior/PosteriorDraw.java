package holdcurve.inference.posterior;

import holdcurve.common.input.Cancellation;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.LatentMap;
import holdcurve.inference.likelihood.Latents;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.hold.Hold;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * One way that a circuit may really be, as far as what is known leaves it open: a draw of its
 * unknowns under one hypothesis. What belongs to a single hold (start pressure, warmth, clamp
 * quality, how a seat closed that time) is not in it and is drawn anew for each hold asked about.
 */
public final class PosteriorDraw {
  private final Job job;
  private final Hypothesis hypothesis;
  private final UnknownPriors priors;
  private final double[] common;
  private final double start;
  private final ReadingScatter scatter;

  /**
   * @param common the coordinates that belong to no single test [-]
   * @param start coordinate of the pressure at the pump stop, over all holds [-]
   */
  private PosteriorDraw(
      Job job,
      Hypothesis hypothesis,
      UnknownPriors priors,
      double[] common,
      double start,
      ReadingScatter scatter) {
    this.job = job;
    this.hypothesis = hypothesis;
    this.priors = priors;
    this.common = common;
    this.start = start;
    this.scatter = scatter;
  }

  /**
   * @param u coordinates of the model, those of its own tests included [-]
   */
  public static PosteriorDraw of(Job job, HypothesisModel model, UnknownPriors priors, double[] u) {
    LatentMap latentMap = model.latentMap();
    return new PosteriorDraw(
        job,
        latentMap.hypothesis(),
        priors,
        Arrays.copyOf(u, latentMap.latents().commonCount()),
        IntStream.range(0, job.tests().size())
            .mapToDouble(test -> latentMap.latents().start(u, test))
            .average()
            .orElse(0),
        new ReadingScatter(model.gaugeOffset(u), model.readingDeviation(u), model.modelError(u)));
  }

  /**
   * Ways that a sound circuit may be before anything was read, from the spreads of what its
   * description leaves open.
   */
  public static List<PosteriorDraw> before(Circuit circuit, GaugeSpec gauge, long seed, int count) {
    return before(circuit, gauge, new Hypothesis(List.of(), 1), seed, count);
  }

  /** Likewise, of a circuit in which a hypothesis is true. */
  public static List<PosteriorDraw> before(
      Circuit circuit, GaugeSpec gauge, Hypothesis hypothesis, long seed, int count) {
    HoldTest any = HoldTest.of("hold", Set.of(), new GaugeLog("none", List.of(), 0));
    Job job = new Job(circuit.title(), circuit, gauge, List.of(any), Map.of(), List.of());
    UnknownPriors priors = UnknownPriors.usual();
    HypothesisModel model = new HypothesisModel(JobModel.planned(job), hypothesis, priors);
    RandomGenerator random = new Well19937c(seed);
    List<PosteriorDraw> posteriorDraws = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Cancellation.check();
      double[] u = new double[model.dimension()];
      Arrays.setAll(u, j -> random.nextGaussian());
      posteriorDraws.add(of(job, model, priors, u));
    }
    return posteriorDraws;
  }

  /** The hypothesis that this is a case of. */
  public Hypothesis hypothesis() {
    return hypothesis;
  }

  /** How readings would scatter about the curve. */
  public ReadingScatter scatter() {
    return scatter;
  }

  /** This, as side evidence sees it; for one thread. */
  public CircuitState truth() {
    return new DrawnCircuitState(this);
  }

  /** The circuit as it is now, faults included, as they are over all tests. */
  public Condition condition() {
    return condition(UnaryOperator.identity(), member -> true);
  }

  /**
   * The circuit after something was changed.
   *
   * @param change of the circuit as described; what is unknown about its parts applies to the
   *     changed one
   * @param left which of the faults are still there
   */
  public Condition condition(UnaryOperator<Circuit> change, Predicate<Hypothesis.Member> left) {
    HoldTest any = job.tests().get(0);
    LatentMap latentMap = latentMap(change, any, left);
    return latentMap.condition(coordinates(latentMap, left, null), -1);
  }

  /** A hold done now, with everything that differs from hold to hold drawn at random. */
  public Hold hold(HoldTest test, RandomGenerator random) {
    return hold(UnaryOperator.identity(), test, member -> true, random);
  }

  /**
   * A hold done after something was changed.
   *
   * @param change as for {@link #condition(UnaryOperator, Predicate)}
   * @param test how it is done; its readings don't matter
   * @param left which of the faults are still there
   * @param random of what differs from hold to hold; null for the middle of all that
   */
  public Hold hold(
      UnaryOperator<Circuit> change,
      HoldTest test,
      Predicate<Hypothesis.Member> left,
      RandomGenerator random) {
    LatentMap latentMap = latentMap(change, test, left);
    double[] u = coordinates(latentMap, left, random);
    return new Hold(latentMap.condition(u, 0), latentMap.setup(u, 0));
  }

  /** The test stands there twice, since leaks vary only where there are several holds. */
  private LatentMap latentMap(
      UnaryOperator<Circuit> change, HoldTest test, Predicate<Hypothesis.Member> left) {
    Job planned =
        new Job(
            job.title(),
            change.apply(job.circuit()),
            job.gauge(),
            List.of(test, test),
            job.priors(),
            List.of());
    List<Hypothesis.Member> members = hypothesis.members().stream().filter(left).toList();
    return new LatentMap(
        JobModel.planned(planned), new Hypothesis(members, hypothesis.priorWeight()), priors);
  }

  private double[] coordinates(
      LatentMap planned, Predicate<Hypothesis.Member> left, RandomGenerator random) {
    double[] u = new double[planned.latents().dimension()];
    int shared = Latents.Shared.values().length;
    System.arraycopy(common, 0, u, 0, shared);
    int from = shared;
    int to = shared;
    for (Hypothesis.Member member : hypothesis.members()) {
      int count = member.fault().parameters().size();
      if (left.test(member)) {
        System.arraycopy(common, from, u, to, count);
        to += count;
      }
      from += count;
    }
    if (random != null) {
      IntStream.range(to, u.length).forEach(j -> u[j] = random.nextGaussian());
    }
    int begins = planned.latents().startIndex(0);
    u[begins] = start + priors.startBetweenHolds() * u[begins];
    return u;
  }
}
