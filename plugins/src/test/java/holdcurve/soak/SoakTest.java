package holdcurve.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.physics.balance.FallLedger;
import holdcurve.physics.balance.FallPart;
import holdcurve.physics.balance.HoldFall;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.PressureLimit;
import holdcurve.physics.network.SimulationException;
import holdcurve.physics.network.VolumeBalance;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.StiffIntegrationException;
import holdcurve.physics.ode.Tolerances;
import holdcurve.physics.run.HoldRun;
import holdcurve.physics.run.RunRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random circuits × faults × tests. Each is simulated as a hold and as a whole log, its fall is
 * divided, and no fuel may be made or lost; what can't be simulated says so in a sentence. {@code
 * -Psoak} makes it ten thousand.
 */
class SoakTest {
  private static final int COUNT = Integer.getInteger("holdcurve.soak.count", 100);
  private static final long SEED = Long.getLong("holdcurve.soak.seed", 1);

  /** A hundredth of what a needle gauge shows, in a circuit of the usual softness [m³]. */
  private static final double LARGEST_IMBALANCE = 5e-8;

  /** Far below what a gauge shows [Pa]. */
  private static final double LARGEST_REST = 10;

  private final FaultCatalogue catalogue = FaultCatalogue.load();
  private final List<String> failures = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();
  private double worstBalance;
  private double worstSum;

  /** An accumulator that emptied within one step lost 0.09 mL. */
  @Test
  void anAccumulatorEmptiesStepByStep() {
    balance(RandomTest.of(400490, catalogue));
  }

  /**
   * A square root that thousandths of a pascal drove threw steps of 1 µs to and fro: 100 000 of
   * them went 1 ms.
   */
  @ParameterizedTest
  @ValueSource(longs = {403085, 403425})
  void littleFlowThroughAWideLineTakesFewSteps(long seed) {
    balance(RandomTest.of(seed, catalogue));
  }

  @Test
  void everyOneGivesACurveOrASentence() {
    for (int i = 0; i < COUNT; i++) {
      RandomTest test = RandomTest.of(SEED + i, catalogue);
      attempt(test, "hold", () -> hold(test));
      attempt(test, "balance", () -> balance(test));
      attempt(test, "ledger", () -> ledger(test));
      attempt(test, "run", () -> run(test));
    }
    System.out.printf(
        Locale.ROOT,
        "Soak: %d circuits with faults and tests, seeds %d on; %d refused in a sentence; worst mass"
            + " balance %.2g mL; parts of a fall off its sum by at most %.2g bar.%n",
        COUNT,
        SEED,
        refusals.size(),
        worstBalance * 1e6,
        worstSum / 1e5);
    assertEquals(List.of(), failures);
    long refused =
        refusals.stream()
            .map(refusal -> refusal.substring(0, refusal.indexOf(',')))
            .distinct()
            .count();
    assertTrue(refused <= COUNT / 100, refusals::toString);
  }

  private void attempt(RandomTest test, String what, Runnable work) {
    try {
      work.run();
    } catch (SimulationException | StiffIntegrationException e) {
      refusals.add(test.seed() + ", " + what + ": " + e.getMessage());
    } catch (RuntimeException e) {
      failures.add(test.seed() + ", " + test.faults() + ", " + what + ": " + e);
    }
  }

  private void hold(RandomTest test) {
    double[] shown =
        new HoldSimulator().readings(test.hold().condition(), test.hold().setup(), test.times());
    check(test, shown);
  }

  private static void check(RandomTest test, double[] shown) {
    for (double one : shown) {
      if (!(one > -1.02 * Fluid.ATMOSPHERE && one <= PressureLimit.MOST)) {
        throw new IllegalStateException("shows " + Arrays.toString(shown));
      }
    }
  }

  private void run(RandomTest test) {
    HoldSetup setup = test.hold().setup();
    double end = test.times()[test.times().length - 1];
    RunRecord record =
        HoldRun.simulate(
            test.hold().condition(), 10, end, setup.clamped(), setup.clampTime(), end / 20);
    check(test, record.gauge());
  }

  private void ledger(RandomTest test) {
    HoldFall fall = FallLedger.of(test.hold(), 0, test.times()[test.times().length - 1]);
    double sum =
        Stream.concat(fall.leaks().stream(), fall.others().values().stream())
            .mapToDouble(FallPart::pressure)
            .sum();
    double off = Math.abs(sum - fall.pressure());
    if (!(off < LARGEST_REST)) {
      throw new IllegalStateException("parts add up to " + sum + ", not " + fall.pressure());
    }
    worstSum = Math.max(worstSum, off);
  }

  private void balance(RandomTest test) {
    HoldSetup setup = test.hold().setup();
    Operation stop = setup.operation();
    Operation[] operations = {
      stop.withPump(true),
      stop.withPump(true).withEngine(0.1, -4e4),
      stop,
      stop.withClamps(setup.clamped(), setup.clampConductance())
    };
    double[] ends = {10, 15, 20, 20 + test.times()[test.times().length - 1]};
    Network network = ledger(test, operations[0]);
    double[] y = network.stateAt(point -> 0, 0, setup.warmth());
    double before = VolumeBalance.total(network, y);
    double time = 0;
    for (int i = 0; i < operations.length; i++) {
      Network next = ledger(test, operations[i]);
      y = next.carryOver(y, network);
      network = next;
      driver(network).integrate(network, time, y, ends[i], new double[0], new double[0][]);
      time = ends[i];
    }
    double off = Math.abs(VolumeBalance.total(network, y) - before);
    if (!(off < LARGEST_IMBALANCE)) {
      throw new IllegalStateException("balance off by " + off * 1e6 + " mL");
    }
    worstBalance = Math.max(worstBalance, off);
  }

  private static Network ledger(RandomTest test, Operation operation) {
    return NetworkAssembler.assemble(test.hold().condition(), operation, Detail.LEDGER);
  }

  private static LeanRosenbrockDriver driver(Network network) {
    return new LeanRosenbrockDriver(
        RosenbrockMethod.RODAS4P2.tableau(), Tolerances.relative(1e-6, network.layout().scales()));
  }
}
