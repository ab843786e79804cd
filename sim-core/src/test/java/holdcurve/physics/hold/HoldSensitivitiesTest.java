package holdcurve.physics.hold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sensitivities of the gauge's curve from the variational equations against differences of curves.
 */
class HoldSensitivitiesTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final Circuit WITH_DAMPER =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/four-cylinder-damper.circuit.json"));
  private static final double[] TIMES =
      IntStream.rangeClosed(0, 40).mapToDouble(i -> 15.0 * i).toArray();

  /** Each parameter a step of its own natural size [-] from the place where all are zero. */
  private static Hold at(Set<String> clamped, double[] u) {
    Condition condition =
        Condition.sound(CIRCUIT)
            .with("gauge-tee", Gauge.AIR, 1e-6 * (1 + u[0]))
            .with("check-valve", CheckValve.WEEP, 3e-10 * (1 + u[1]))
            .with("regulator", Regulator.SET, 2e5 * (1 + 0.1 * u[2]))
            .with("feed-hose", Hose.COMPLIANCE, 4e-12 * (1 + u[3]))
            .with("feed-hose", Hose.SLOW_CREEP, 0.12 * (1 + u[4]))
            .with("feed-hose", Hose.SLOW_CREEP_TIME, 450.0)
            .with(
                new LeakPath(
                    "rail", Circuit.AIR, OrificeLaw.throughPoint(5e-9 * (1 + u[5]), 2e5, 3e4)));
    return new Hold(
        condition,
        new HoldSetup(
            2.03e5 * (1 + 0.1 * u[6]),
            20,
            1 + u[7],
            Operation.holding(),
            clamped,
            5,
            1e-15 * (1 + u[8]),
            0.08e-6 * (1 + u[9])));
  }

  private static final int PARAMETERS = 10;

  private static Hold moved(Set<String> clamped, int k, double by) {
    double[] u = new double[PARAMETERS];
    u[k] = by;
    return at(clamped, u);
  }

  private static List<Hold> moved(Set<String> clamped, double step) {
    List<Hold> moved = new ArrayList<>();
    for (int k = 0; k < PARAMETERS; k++) {
      moved.add(moved(clamped, k, step));
    }
    return moved;
  }

  private static double[] readings(HoldSimulator simulator, Hold hold) {
    return simulator.readings(hold.condition(), hold.setup(), TIMES);
  }

  /** Sensitivities to 1e-3 of their size, or to the 0.2 mbar that no reading shows. */
  @ParameterizedTest
  @ValueSource(strings = {"", "return-hose", "feed-hose,return-hose"})
  void sensitivitiesAreThoseOfDifferences(String hoses) {
    Set<String> clamped = hoses.isEmpty() ? Set.of() : Set.of(hoses.split(","));
    Hold base = at(clamped, new double[PARAMETERS]);
    HoldSensitivities sensitivities =
        new HoldSimulator(Detail.LUMPED, 1e-5)
            .sensitivities(base, moved(clamped, 1e-5), 1e-5, TIMES);
    HoldSimulator tight = new HoldSimulator(Detail.LUMPED, 1e-9);
    for (int k = 0; k < PARAMETERS; k++) {
      double[] up = readings(tight, moved(clamped, k, 1e-3));
      double[] down = readings(tight, moved(clamped, k, -1e-3));
      for (int i = 0; i < TIMES.length; i++) {
        double difference = (up[i] - down[i]) / 2e-3;
        assertEquals(
            difference, sensitivities.sensitivities()[i][k], 20 + 1e-3 * Math.abs(difference));
      }
    }
  }

  /** Sensitivities take steps of a tenth of the tolerance. */
  @Test
  void theCurveIsThatOfAPlainRun() {
    Set<String> clamped = Set.of("return-hose");
    Hold base = at(clamped, new double[PARAMETERS]);
    HoldSensitivities sensitivities =
        new HoldSimulator(Detail.LUMPED, 1e-4)
            .sensitivities(base, moved(clamped, 1e-4), 1e-4, TIMES);
    HoldSimulator asTight = new HoldSimulator(Detail.LUMPED, 1e-5);
    assertArrayEquals(readings(asTight, base), sensitivities.shown(), 1e-6);
  }

  /** A hose with a creep time of its own is one state more. */
  @Test
  void parametersThatChangeTheStatesAreDifferenced() {
    Hold base = at(Set.of(), new double[PARAMETERS]);
    Hold other =
        new Hold(base.condition().with("feed-hose", Hose.SLOW_CREEP_TIME, 451.0), base.setup());
    HoldSimulator simulator = new HoldSimulator();
    HoldSensitivities sensitivities = simulator.sensitivities(base, List.of(other), 0.5, TIMES);
    double[] from = readings(simulator, base);
    double[] to = readings(simulator, other);
    for (int i = 0; i < TIMES.length; i++) {
      assertEquals((to[i] - from[i]) / 0.5, sensitivities.sensitivities()[i][0], 1e-9);
    }
  }

  /** The usual tolerance against a tight one: half a millibar, where a gauge shows ten. */
  @ParameterizedTest
  @ValueSource(strings = {"", "return-hose", "feed-hose,return-hose"})
  void theUsualToleranceIsCloseEnough(String hoses) {
    Set<String> clamped = hoses.isEmpty() ? Set.of() : Set.of(hoses.split(","));
    Hold hold = at(clamped, new double[PARAMETERS]);
    double[] tight = readings(new HoldSimulator(Detail.LUMPED, 1e-9), hold);
    assertArrayEquals(tight, readings(new HoldSimulator(), hold), 50);
  }

  /**
   * A diaphragm that meets its stop between two readings, at the usual tolerance: error control
   * doesn't see sensitivities, and one step across the stop leaves them 40 % off from there on.
   */
  @Test
  void sensitivitiesHoldAcrossAHardStop() {
    double step = 1e-5;
    HoldSensitivities sensitivities =
        new HoldSimulator().sensitivities(onToTheStop(0), List.of(onToTheStop(step)), step, TIMES);
    HoldSimulator tight = new HoldSimulator(Detail.LUMPED, 1e-9);
    double[] up = readings(tight, onToTheStop(1e-4));
    double[] down = readings(tight, onToTheStop(-1e-4));
    for (int i = 0; i < TIMES.length; i++) {
      double difference = (up[i] - down[i]) / 2e-4;
      assertEquals(
          difference, sensitivities.sensitivities()[i][0], 20 + 0.02 * Math.abs(difference));
    }
  }

  private static Hold onToTheStop(double more) {
    Condition condition =
        Condition.sound(WITH_DAMPER)
            .with("damper", Damper.CENTRE, 1.7e5)
            .with("damper", Damper.WIDTH, 1.2e4)
            .with("damper", Damper.HARDNESS, 20.0)
            .with(
                new LeakPath(
                    "rail", Circuit.AIR, OrificeLaw.throughPoint(5e-9 * (1 + more), 2e5, 3e4)));
    return new Hold(
        condition, new HoldSetup(2.03e5, 20, 0, Operation.holding(), Set.of(), 5, 1e-15, 0));
  }
}
