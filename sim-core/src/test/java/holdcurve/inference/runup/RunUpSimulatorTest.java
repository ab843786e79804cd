package holdcurve.inference.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Pump;
import holdcurve.physics.run.RunPlan;
import holdcurve.physics.run.RunSimulator;
import holdcurve.physics.run.RunStep;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fast run-up against the whole run, with every node, every switch as an event, creep and
 * hysteresis: nearer than a needle can be read (0.02 bar), but in the second after a blocked return
 * is switched.
 */
class RunUpSimulatorTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final double[] DURATION = {12, 10, 6, 3, 5, 8};
  private static final boolean[] PUMP = {true, true, true, false, false, true};
  private static final double[] DUTY = {0, 1, 0, 0, 0.05, 0};
  private static final double STOP = Arrays.stream(DURATION).sum();

  private record Case(String name, Condition condition, Set<String> changed, double within) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() {
    Condition sound = Condition.sound(CIRCUIT);
    double flow = CIRCUIT.part("pump").value(Pump.FREE_FLOW);
    double spray = CIRCUIT.part("injectors").value(Injector.STATIC_FLOW);
    return Stream.of(
        new Case("sound", sound, Set.of(), 1.5e3),
        new Case("pump", sound.with("pump", Pump.FREE_FLOW, 0.4 * flow), Set.of("pump"), 1.5e3),
        new Case("pump that stalls", sound.with("pump", Pump.STALL, 1.5e5), Set.of("pump"), 2e3),
        new Case("filter", sound.with("filter", Filter.DROP, 1.5e5), Set.of("filter"), 1.8e3),
        new Case("air", sound.with("gauge-tee", Gauge.AIR, 9e-6), Set.of(), 1.5e3),
        new Case(
            "injectors",
            sound.with("injectors", Injector.STATIC_FLOW, 0.7 * spray),
            Set.of("injectors"),
            1.5e3),
        new Case("return", sound.with("return-hose", Hose.BORE, 2e-3), Set.of("return-hose"), 3e3));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithTheWholeRun(Case one) {
    double[] times = new double[(int) (STOP * 5)];
    Arrays.setAll(times, i -> 0.1 + 0.2 * i - STOP);
    double[] whole = new RunSimulator().simulate(one.condition(), plan(), times).gauge();
    Condition running =
        new RunningCar(CIRCUIT, Running.shipped())
            .of(one.condition(), CIRCUIT, new double[RunningCar.UNKNOWNS]);
    double[] fast =
        new RunUpSimulator(CIRCUIT, one.changed())
            .readings(running, -STOP, 0, stages(), Operation.ROOM_TEMPERATURE, times);
    for (int i = 0; i < times.length; i++) {
      assertEquals(whole[i], fast[i], one.within(), "at " + times[i] + " s");
    }
  }

  /** The root is where the course comes to rest; a pump that stalls takes its time. */
  @ParameterizedTest
  @MethodSource("cases")
  void settlesWhereTheCourseEnds(Case one) {
    Condition running =
        new RunningCar(CIRCUIT, Running.shipped())
            .of(one.condition(), CIRCUIT, new double[RunningCar.UNKNOWNS]);
    RunUpSimulator simulator = new RunUpSimulator(CIRCUIT, one.changed());
    RunUp.Stage stage = new RunUp.Stage(-60, 0, true, 0);
    double[] followed =
        simulator.readings(
            running, -60, 0, List.of(stage), Operation.ROOM_TEMPERATURE, new double[] {-0.1});
    Operation operation = RunUp.operation(stage, Operation.ROOM_TEMPERATURE);
    assertEquals(followed[0], simulator.settled(running, operation), 500);
  }

  private static RunPlan plan() {
    List<RunStep> steps = new ArrayList<>();
    for (int i = 0; i < DURATION.length; i++) {
      boolean pump = PUMP[i];
      double duty = DUTY[i];
      steps.add(
          new RunStep(
              "step " + i,
              DURATION[i],
              before -> before.withPump(pump).withEngine(duty, 0),
              Map.of()));
    }
    steps.add(RunStep.stop(1));
    return new RunPlan(Operation.holding(), 0, steps);
  }

  private static List<RunUp.Stage> stages() {
    List<RunUp.Stage> stages = new ArrayList<>();
    double from = -STOP;
    for (int i = 0; i < DURATION.length; i++) {
      stages.add(new RunUp.Stage(from, from + DURATION[i], PUMP[i], DUTY[i]));
      from += DURATION[i];
    }
    return stages;
  }
}
