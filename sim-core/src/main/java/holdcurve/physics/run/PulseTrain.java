package holdcurve.physics.run;

import holdcurve.common.input.Require;
import holdcurve.physics.network.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * All injectors fired together, one pulse after another, where an average over time won't do: the
 * ripple of the rail, or a few pulses with the pump stopped. Each opening and shutting is a switch.
 *
 * @param pulses how many
 * @param period from the start of one pulse to the next [s]
 * @param width how long the coil is fed [s], below the period
 * @param delay from the coil being fed to the needle letting fuel past [s], below the width; a
 *     needle that shuts later than the coil is cut shortens it
 */
public record PulseTrain(int pulses, double period, double width, double delay) {
  public PulseTrain {
    Require.positive(pulses, "number of pulses", "-");
    Require.positive(period, "pulse period", "s");
    Require.within(width, 0, period, "pulse width", "s");
    Require.within(delay, 0, width, "opening delay", "s");
  }

  /** Share of the time that fuel flows [-]. */
  public double duty() {
    return (width - delay) / period;
  }

  /**
   * The switches, for a plan: waiting for the needle, open, shut, and so on. The pump is left as it
   * is.
   *
   * @param manifold intake manifold [Pa gauge]
   */
  public List<RunStep> steps(double manifold) {
    List<RunStep> steps = new ArrayList<>();
    for (int i = 0; i < pulses; i++) {
      add(steps, "coil fed", delay, before -> before.withEngine(0, manifold));
      add(steps, "injectors open", width - delay, before -> before.withEngine(1, manifold));
      add(steps, "injectors shut", period - width, before -> before.withEngine(0, manifold));
    }
    return steps;
  }

  private static void add(
      List<RunStep> steps, String name, double duration, UnaryOperator<Operation> change) {
    if (duration > 0) {
      steps.add(new RunStep(name, duration, change, Map.of()));
    }
  }
}
