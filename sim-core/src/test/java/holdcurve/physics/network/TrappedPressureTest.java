package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** What every hold obeys, whatever its numbers. */
class TrappedPressureTest {
  private static final List<String> TRAPPED =
      List.of("feed-start", "feed-pipe-end", "filter-outlet", "rail", "regulator-inlet");

  private static final double[] TIMES = {0, 1, 2, 4, 8, 15, 30, 60, 100, 150, 225, 300, 450, 600};

  /** Error of the integration that a comparison must leave room for [Pa]. */
  private static final double SLACK = 0.5;

  /**
   * First law of a tight circuit: walls that are not yet stretched out take fuel, and nothing gives
   * any back, as long as no wall was stretched further than the pressure now holds it.
   */
  @Property(tries = 25)
  void tightAndSteadyCircuitNeverRises(
      @ForAll @DoubleRange(min = 0.3e5, max = 1.9e5) double pressure,
      @ForAll @DoubleRange(max = 3000) double soak,
      @ForAll boolean clamped) {
    Condition tight = Condition.sound(Circuits.withoutWeeps(Circuits.SIX_CYLINDER));
    Operation operation =
        Operation.holding().withClamps(clamped ? Circuits.CLAMPABLE : Set.of(), 0);
    Network network = NetworkAssembler.assemble(tight, operation, Detail.FULL);
    double[] y = network.stateAt(p -> TRAPPED.contains(p) ? pressure : 0, soak, 0);
    double[][] rows = new double[TIMES.length][y.length];
    new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.relative(1e-7, network.layout().scales()))
        .integrate(network, 0, y, 600, TIMES, rows);
    for (String point : TRAPPED) {
      int row = network.layout().node(point).row();
      for (int i = 1; i < rows.length; i++) {
        assertTrue(
            rows[i][row] <= rows[i - 1][row] + SLACK,
            point + " rises at " + TIMES[i] + " s from " + rows[i - 1][row] + " Pa");
      }
    }
  }

  @Property(tries = 25)
  void biggerLeakNeverFallsSlower(
      @ForAll @DoubleRange(max = 2) double smallInMillilitresPerMinute,
      @ForAll @DoubleRange(min = 1, max = 20) double factor,
      @ForAll boolean orifice,
      @ForAll @Size(max = 2) Set<Boolean> clamps) {
    Set<String> clamped =
        clamps.size() == 2
            ? Circuits.CLAMPABLE
            : clamps.isEmpty()
                ? Set.of()
                : Set.of(clamps.contains(true) ? "feed-hose" : "return-hose");
    HoldSetup setup = HoldSetup.plain(2.05e5).clampedAt(5, clamped);
    double small = Unit.MILLILITRE_PER_MINUTE.toSi(smallInMillilitresPerMinute);
    double[] slow = readings(small, orifice, setup);
    double[] fast = readings(small * factor + 1e-12, orifice, setup);
    for (int i = 0; i < TIMES.length; i++) {
      assertTrue(fast[i] <= slow[i] + SLACK, "at " + TIMES[i] + " s: " + fast[i] + " " + slow[i]);
    }
  }

  private static double[] readings(double flow, boolean orifice, HoldSetup setup) {
    LeakPath leak =
        new LeakPath(
            "rail",
            Circuit.AIR,
            orifice ? OrificeLaw.throughPoint(flow, 2e5, 1e3) : LaminarLaw.throughPoint(flow, 2e5));
    Condition condition = Condition.sound(Circuits.SIX_CYLINDER).with(leak);
    return new HoldSimulator(Detail.LUMPED, 1e-7).readings(condition, setup, TIMES);
  }
}
