package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import holdcurve.oracle.TestFluid;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Decays of one trapped volume through known leaks, C dp/dt = −Q(p), solved by separation of
 * variables. First principles; the constants of each case were computed apart from this program.
 */
class ClosedFormHoldTest {
  private static final double START = 2e5;

  /** Hagen–Poiseuille tube, r 10 µm, L 2 mm, 0.45 mPa·s: 4.36332e-15 m³/(s·Pa). */
  private static final FlowLaw TUBE =
      new LaminarLaw(
          Math.PI * Math.pow(10e-6, 4) / (8 * TestFluid.FUEL.constantViscosity() * 2e-3));

  /** Hole of 10 µm, C 0.62, with a linear part too short to show. */
  private static final FlowLaw HOLE =
      new OrificeLaw(
          0.62 * Math.PI * 1e-10 / 4 * Math.sqrt(2 / TestFluid.FUEL.constantDensity()), 1);

  @OutsideCheck(
      what = "hold of a volume that leaks through a tube",
      source = "closed form, constants computed apart",
      value = "40 moments",
      tolerance = 1e-6,
      unit = "of the starting pressure")
  @Test
  void laminarLeakFallsExponentially() {
    double tau = Vessel.CAPACITY / TUBE.slope(0);
    assertEquals(56.0225, tau, 5e-5, "time constant computed apart [s]");
    follows("a tube", t -> START * Math.exp(-t / tau), 300, TUBE);
  }

  @OutsideCheck(
      what = "hold of a volume that leaks through a hole",
      source = "closed form, constants computed apart",
      value = "40 moments",
      tolerance = 1e-6,
      unit = "of the starting pressure")
  @Test
  void holeFallsAsASquareAndEndsInFiniteTime() {
    double end = 2 * Vessel.CAPACITY * START / HOLE.flow(START);
    assertEquals(86.3663, end, 5e-5, "end computed apart [s]");
    follows("a hole", t -> START * (1 - t / end) * (1 - t / end), 0.95 * end, HOLE);
  }

  /** With s = √p, 2 C ds/dt = −(G s + k): a shifted exponential in s. */
  @OutsideCheck(
      what = "hold of a volume that leaks through both",
      source = "closed form, constants computed apart",
      value = "40 moments",
      tolerance = 1e-6,
      unit = "of the starting pressure")
  @Test
  void laminarLeakBesideAHole() {
    double conductance = TUBE.slope(0);
    double shift = HOLE.flow(START) / Math.sqrt(START) / conductance;
    double rate = conductance / (2 * Vessel.CAPACITY);
    DoubleUnaryOperator root = t -> (Math.sqrt(START) + shift) * Math.exp(-rate * t) - shift;
    follows("both", t -> Math.pow(root.applyAsDouble(t), 2), 45, TUBE, HOLE);
  }

  /** Holds a computed decay to 1e-6 of the starting pressure. */
  private static void follows(
      String leak, DoubleUnaryOperator closedForm, double end, FlowLaw... leaks) {
    Network network = Vessel.leakingBy(leaks);
    double[] y = network.stateAt(point -> START, 0, 0);
    double[] times = new double[40];
    for (int i = 0; i < times.length; i++) {
      times[i] = end * (i + 1) / times.length;
    }
    double[][] rows = new double[times.length][y.length];
    new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS5P.tableau(),
            Tolerances.relative(1e-9, network.layout().scales()))
        .integrate(network, 0, y, end, times, rows);
    for (int i = 0; i < times.length; i++) {
      OutsideChecks.holds(
          "hold of a volume that leaks through " + leak,
          closedForm.applyAsDouble(times[i]) / START,
          rows[i][0] / START);
    }
  }
}
