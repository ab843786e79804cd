package holdcurve.bench.droptest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/**
 * Simulated drop tests, read to 0.05 bar, on circuits whose hoses, seats and damper differ from
 * what the judge is told.
 */
class DropCoverageTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(Path.of("../scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final BenchLimits LIMITS = BenchLimits.shipped();
  private static final Shot SHOT = new Shot(1, 0.25, 8);
  private static final double STEP = 0.05e5;
  private static final int INJECTORS = 6;
  private static final int CASES = 200;

  private static final TrappedFuel TOLD = TrappedFuel.of(CIRCUIT, SHOT.pause());

  /** Every value that the circuit file leaves open, drawn from its stated spread. */
  private static Condition another(RandomGenerator random) {
    Circuit circuit = CIRCUIT;
    for (Part part : CIRCUIT.parts()) {
      for (Property property : part.kind().properties()) {
        if (property.spread() > 0 && !part.states(property)) {
          double drawn = part.value(property) * Math.exp(property.spread() * random.nextGaussian());
          double kept = Math.max(property.least(), Math.min(property.most(), drawn));
          circuit = circuit.with(part.id(), property, kept);
        }
      }
    }
    return Condition.sound(circuit);
  }

  private static double[] shares(RandomGenerator random) {
    double[] shares = new double[INJECTORS];
    for (int i = 0; i < INJECTORS; i++) {
      shares[i] = Math.exp(0.06 * random.nextGaussian());
    }
    return shares;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return (sorted[2] + sorted[3]) / 2;
  }

  private static DropPlan plan(int repeats, double scatter) {
    return new DropPlan(SHOT, repeats, 2.0e5, scatter, STEP, 60);
  }

  /**
   * Of all 1200 intervals of 200 tests, and of the one of each test that was asked about: the
   * interval may miss by no more than chance lets it.
   */
  @Test
  void ninetyPercentIntervalsHoldTheTruth() {
    RandomGenerator random = new Well19937c(11);
    int firsts = 0;
    int all = 0;
    for (int c = 0; c < CASES; c++) {
      double[] shares = shares(random);
      double scatter = STEP * Math.exp(Math.log(0.1) * random.nextDouble());
      int repeats = 3 + random.nextInt(6);
      DropTest test =
          DropTestSimulator.simulate(
              another(random), shares, plan(repeats, scatter), random.nextLong());
      DropReport report = DropAssessment.judge(test, TOLD, LIMITS, c);
      for (int i = 0; i < INJECTORS; i++) {
        Interval found = report.of(Integer.toString(i + 1)).departure();
        boolean inside = found.contains(shares[i] / median(shares) - 1);
        all += inside ? 1 : 0;
        firsts += i == 0 && inside ? 1 : 0;
      }
    }
    double share = all / (double) (INJECTORS * CASES);
    String said = share + " of all, " + firsts + " of " + CASES + " firsts";
    assertTrue(share >= 0.85 && share <= 0.95, said);
    assertTrue(firsts >= 0.83 * CASES && firsts <= 0.97 * CASES, said);
  }

  /** The test is first done once, and then as often as that advises. */
  @Test
  void findsAFifteenPercentLowOneWithTheRepeatsItAdvised() {
    RandomGenerator random = new Well19937c(12);
    int found = 0;
    int cases = 40;
    for (int c = 0; c < cases; c++) {
      double[] shares = {1, 1, 1, 0.85, 1, 1};
      Condition circuit = another(random);
      DropTest once = DropTestSimulator.simulate(circuit, shares, plan(1, 0.03e5), c);
      int advised = DropAssessment.judge(once, TOLD, LIMITS, c).advice().repeats();
      DropTest again = DropTestSimulator.simulate(circuit, shares, plan(advised, 0.03e5), 1000 + c);
      InjectorDrop lowest = DropAssessment.judge(again, TOLD, LIMITS, c).injectors().get(0);
      boolean low = lowest.sure() && lowest.standing() != Standing.IN_LINE;
      found += lowest.id().equals("4") && low ? 1 : 0;
    }
    assertTrue(found >= 0.9 * cases, found + " of " + cases);
  }
}
