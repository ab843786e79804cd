package holdcurve.physics.run;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.network.SimulationException;
import holdcurve.physics.network.Threshold;
import holdcurve.physics.network.ValveState;
import holdcurve.physics.ode.RosenbrockIntegrator;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.StiffIntegrationException;
import holdcurve.physics.ode.StiffRun;
import holdcurve.physics.part.Regulator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One run under way: where it has got to, from switch to switch. Its clock is zero at the pump
 * stop.
 */
final class Walk {
  /** A valve that opens and shuts more often than this in one step of a plan is a mistake. */
  private static final int MOST_CHANGES = 1_000;

  private static final double EVENT_CHECK = 0.5;
  private static final double EVENT_ACCURACY = 1e-7;

  private final Condition condition;
  private final double tolerance;
  private final int mostSteps;
  private final Sampler sampler;
  private final List<RunEvent> events = new ArrayList<>();
  private final ChatterWatch chatter = new ChatterWatch();
  private Operation operation;
  private Network network;
  private double[] y;
  private double time;
  private int stepsLeft;

  /**
   * @param mostSteps of the integrator in one step of the plan [-]
   */
  Walk(Condition condition, RunPlan plan, double tolerance, int mostSteps, Sampler sampler) {
    this.condition = condition;
    this.tolerance = tolerance;
    this.mostSteps = mostSteps;
    this.sampler = sampler;
    time = -plan.pumpStop();
    operation = plan.before();
    for (Part part : condition.circuit().partsOf(Regulator.KIND)) {
      operation = operation.withValve(part.id(), ValveState.SEATED);
    }
    network = NetworkAssembler.assemble(condition, operation, Detail.FULL);
    if (network.layout().gaugeRow() < 0) {
      throw new IllegalArgumentException(condition.circuit().title() + " has no gauge to read");
    }
    y = network.stateAt(point -> 0, 0, plan.warmth());
  }

  /** Takes every step of the plan and returns what happened. */
  List<RunEvent> finish(RunPlan plan) {
    plan.steps().forEach(this::take);
    sampler.finish(y);
    return events;
  }

  private void take(RunStep step) {
    double end = time + step.duration();
    events.add(new RunEvent(time, step.name()));
    switchTo(settled(step.change().apply(operation)));
    step.warming()
        .forEach(
            (region, kelvin) -> {
              int row = network.layout().warmthRow(region);
              if (row >= 0) {
                y[row] -= kelvin;
              }
            });
    int changes = 0;
    stepsLeft = mostSteps;
    while (time < end) {
      Optional<Threshold> passed = alreadyPassed().or(() -> integrate(end));
      passed.ifPresent(this::change);
      if (passed.isPresent() && ++changes > MOST_CHANGES) {
        throw SimulationException.restless(condition.circuit().title(), passed.get().part(), time);
      }
    }
  }

  /** Where the pump starts or stops, what reaches a valve is another flow: it is followed again. */
  private Operation settled(Operation next) {
    Operation settled = next;
    if (next.pumpRunning() != operation.pumpRunning()) {
      for (Map.Entry<String, ValveState> valve : next.valves().entrySet()) {
        if (valve.getValue() == ValveState.CHATTERING) {
          settled = settled.withValve(valve.getKey(), ValveState.FLOWING);
        }
      }
    }
    return settled;
  }

  private Optional<Threshold> alreadyPassed() {
    return network.thresholds().stream().filter(one -> one.beyond(y) > 0).findFirst();
  }

  private void change(Threshold passed) {
    ValveState before = operation.valves().get(passed.part());
    boolean often = chatter.chatters(passed.part(), time);
    ValveState next =
        often && before == ValveState.SEATED ? ValveState.CHATTERING : passed.becomes();
    String what =
        switch (next) {
          case SEATED -> " shuts";
          case FLOWING -> " opens";
          case CHATTERING -> " chatters";
        };
    events.add(new RunEvent(time, passed.part() + what));
    switchTo(operation.withValve(passed.part(), next));
  }

  private void switchTo(Operation next) {
    Network before = network;
    operation = next;
    network = NetworkAssembler.assemble(condition, operation, Detail.FULL);
    y = network.carryOver(y, before);
  }

  /** Goes on to the end, or to the first valve that changes. */
  private Optional<Threshold> integrate(double end) {
    RosenbrockIntegrator integrator = integrator();
    List<ThresholdEvent> watched = network.thresholds().stream().map(ThresholdEvent::new).toList();
    watched.forEach(event -> integrator.addEventHandler(event, EVENT_CHECK, EVENT_ACCURACY, 100));
    sampler.follow(network);
    integrator.addStepHandler(sampler);
    integrator.addStepHandler(new LimitHandler(condition.circuit().title(), network));
    try {
      time = integrator.integrate(network, time, y, end, y);
    } catch (StiffIntegrationException e) {
      throw SimulationException.of(e, condition.circuit().title(), network);
    }
    StiffRun cost = integrator.statistics();
    stepsLeft = Math.max(1, stepsLeft - cost.accepted() - cost.rejected());
    return watched.stream()
        .filter(ThresholdEvent::passed)
        .map(ThresholdEvent::threshold)
        .findFirst();
  }

  private RosenbrockIntegrator integrator() {
    double[] absolute = network.layout().scales();
    double[] relative = new double[absolute.length];
    Arrays.fill(relative, tolerance);
    Arrays.setAll(absolute, row -> tolerance * absolute[row]);
    RosenbrockIntegrator integrator =
        new RosenbrockIntegrator(
            RosenbrockMethod.RODAS4.tableau(), 0, Double.MAX_VALUE, absolute, relative);
    integrator.setMostSteps(stepsLeft);
    return integrator;
  }
}
