package holdcurve.training;

import holdcurve.common.input.Require;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.GaugeSpec;
import java.util.List;

/**
 * A car in the training bay.
 *
 * @param title what it is called; says nothing of the fault
 * @param level from 1, easy, to 5, nasty
 * @param story what the owner tells
 * @param circuit as its papers describe it
 * @param gauge what it is read with
 * @param steps what may be done to it
 * @param minutes time for it [min]
 * @param secret what is really wrong
 */
public record Exercise(
    String title,
    int level,
    String story,
    Circuit circuit,
    GaugeSpec gauge,
    List<Step> steps,
    double minutes,
    Secret secret) {
  /** Format and version that exercise files carry. */
  public static final String FORMAT = "holdcurve-exercise/1";

  public Exercise {
    Require.within(level, 1, 5, "level", "-");
    Require.positive(minutes, "time for an exercise", "min");
    steps = List.copyOf(steps);
  }
}
