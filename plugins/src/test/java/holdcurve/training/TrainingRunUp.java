package holdcurve.training;

import holdcurve.fault.LeakFault;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.Operation;
import holdcurve.physics.run.RunPlan;
import holdcurve.physics.run.RunSimulator;
import holdcurve.physics.run.RunStep;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.job.EyeReadings;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import holdcurve.record.log.TimedEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A car that differs from its papers, on which a whole run is logged: pump on, injectors held open,
 * injectors pulsed with the pump off, pump on again, hold. Simulated with every node and every
 * switch, read by eye from a film of the needle.
 */
final class TrainingRunUp {
  private static final double[] AFTER_A_SWITCH = {0.3, 0.6, 0.9, 1.2, 1.6, 2, 3, 4, 6, 8};
  private static final double[] HOLD = {
    0, 15, 30, 45, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600
  };

  private final Condition condition;
  private final GaugeSpec gauge;
  private final long seed;

  TrainingRunUp(Circuit papers, LeakFault fault, GaugeSpec gauge, long seed) {
    Condition sound = Condition.sound(CarVariation.of(papers, seed));
    double[] usual = fault.parameters().stream().mapToDouble(p -> p.prior().at(0)).toArray();
    condition = fault.apply(sound, fault.sites(sound.circuit()).get(0), usual);
    this.gauge = gauge;
    this.seed = seed;
  }

  private static RunStep step(String name, double duration, boolean pump, double duty) {
    return new RunStep(
        name, duration, before -> before.withPump(pump).withEngine(duty, 0), Map.of());
  }

  HoldTest logged() {
    List<RunStep> steps =
        List.of(
            RunStep.rest(2),
            step("pump on", 10, true, 0),
            step("injectors open", 8, true, 1),
            step("injectors shut", 6, true, 0),
            step("pump off", 3, false, 0),
            step("injectors 5 %", 5, false, 0.05),
            step("injectors shut", 2, false, 0),
            step("pump on", 8, true, 0),
            step("pump off", 600, false, 0));
    RunPlan plan = new RunPlan(Operation.holding(), 0, steps);
    List<Double> times = new ArrayList<>();
    List<TimedEvent> events = new ArrayList<>();
    double at = -plan.pumpStop();
    times.add(at);
    for (RunStep step : steps) {
      if (!step.name().equals("rest")) {
        events.add(new TimedEvent(at, LogEvent.of(step.name())));
        for (double after : at < 0 ? AFTER_A_SWITCH : HOLD) {
          if (after < step.duration() || at >= 0) {
            times.add(at + after);
          }
        }
      }
      at += step.duration();
    }
    double[] when = times.stream().mapToDouble(Double::doubleValue).toArray();
    double[] needle = new RunSimulator().simulate(condition, plan, when).gauge();
    double[] read = EyeReadings.of(needle, gauge, seed);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < when.length; i++) {
      readings.add(Reading.of(when[i], read[i]));
    }
    return new HoldTest(
        "whole run",
        Set.of(),
        5,
        8,
        OptionalDouble.empty(),
        new GaugeLog("a film of the needle", readings, events, 0),
        "",
        "");
  }

  /** Fuel drawn off quickly: what walls, damper and air give up, without creep. */
  DrawOff drawnOff(double from, double to) {
    Network network = NetworkAssembler.assemble(condition, Operation.holding(), Detail.LUMPED);
    NetworkLayout layout = network.layout();
    int row = layout.node(layout.gaugePoint()).row();
    double volume = 0;
    int pieces = 200;
    for (int i = 0; i < pieces; i++) {
      double p = to + (from - to) * (i + 0.5) / pieces;
      volume += network.capacity(row, p) * (from - to) / pieces;
    }
    double read = Math.rint(volume / 0.1e-6) * 0.1e-6;
    return new DrawOff(read, from, to, 10, Set.of());
  }
}
