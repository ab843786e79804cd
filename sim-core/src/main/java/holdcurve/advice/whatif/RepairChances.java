package holdcurve.advice.whatif;

import holdcurve.common.work.ComputationException;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.limit.PassLimit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Whether a hold passes after any set of repairs, for every way that a circuit may be. Only which
 * faults are left matters, so each draw is simulated once for each set of those.
 */
public final class RepairChances {
  private static final int DRAWS = 200;

  /** Bits of {@code left} say which members of a hypothesis are still there. */
  private record Tried(Weighted draw, boolean[] passes) {}

  private final List<RepairOffer> offers;
  private final Map<String, List<Tried>> byHypothesis = new LinkedHashMap<>();
  private final Map<String, Double> probability = new LinkedHashMap<>();

  /**
   * @param limit what a hold must show to pass
   * @param seed of the random numbers; the same seed gives the same answer
   */
  public RepairChances(
      List<HypothesisPosterior> posterior,
      Circuit circuit,
      PassLimit limit,
      List<RepairOffer> offers,
      long seed) {
    this.offers = List.copyOf(offers);
    List<Weighted> draws = Weighted.of(posterior, DRAWS, seed);
    Tried[] tried = new Tried[draws.size()];
    IntStream.range(0, tried.length).parallel().forEach(i -> tried[i] = tried(draws.get(i), limit));
    double sum = draws.stream().mapToDouble(Weighted::weight).sum();
    for (Tried one : tried) {
      String id = one.draw().posteriorDraw().hypothesis().id();
      byHypothesis.computeIfAbsent(id, key -> new ArrayList<>()).add(one);
      probability.merge(id, one.draw().weight() / sum, Double::sum);
    }
  }

  private static Tried tried(Weighted draw, PassLimit limit) {
    List<Hypothesis.Member> members = draw.posteriorDraw().hypothesis().members();
    boolean[] passes = new boolean[1 << members.size()];
    HoldSimulator simulator = new HoldSimulator();
    for (int left = 0; left < passes.length; left++) {
      int still = left;
      passes[left] = passes(draw, m -> (still >> members.indexOf(m) & 1) == 0, limit, simulator);
    }
    return new Tried(draw, passes);
  }

  private static boolean passes(
      Weighted draw, Predicate<Hypothesis.Member> cured, PassLimit limit, HoldSimulator simulator) {
    Change none = Change.none();
    Change repaired =
        new Change(
            List.of("repaired"),
            none.circuit(),
            cured,
            none.adds(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    Hold hold = WhatIf.hold(draw, repaired);
    try {
      double[] shown =
          simulator.readings(hold.condition(), hold.setup(), new double[] {0, limit.time()});
      return shown[1] >= limit.pressure();
    } catch (ComputationException e) {
      return false;
    }
  }

  /** The repairs, in order; bit i of a set of repairs stands for the i-th. */
  public List<RepairOffer> offers() {
    return offers;
  }

  /** Ids of the hypotheses with their probabilities [-]. */
  public Map<String, Double> probabilities() {
    return probability;
  }

  /** Probability that a hold fails after a set of repairs, if a hypothesis is true [-]. */
  public double fails(String hypothesis, int done) {
    List<Tried> draws = byHypothesis.get(hypothesis);
    long failing = draws.stream().filter(one -> !one.passes()[left(one, done)]).count();
    return (double) failing / draws.size();
  }

  private int left(Tried one, int done) {
    List<Hypothesis.Member> members = one.draw().posteriorDraw().hypothesis().members();
    int left = 0;
    for (int m = 0; m < members.size(); m++) {
      left |= isCured(members.get(m), done) ? 0 : 1 << m;
    }
    return left;
  }

  private boolean isCured(Hypothesis.Member member, int done) {
    return IntStream.range(0, offers.size())
        .anyMatch(i -> (done >> i & 1) == 1 && offers.get(i).cures(member));
  }

  /** Probability that a hold passes after a set of repairs [-]. */
  public double passes(int done) {
    double passing = 0;
    for (Map.Entry<String, Double> one : probability.entrySet()) {
      passing += one.getValue() * (1 - fails(one.getKey(), done));
    }
    return passing;
  }
}
