package holdcurve.training;

import java.util.List;

/**
 * What an exercise keeps to itself until the debrief.
 *
 * @param faults none for a sound circuit
 * @param seed of everything by which this car differs from its description, and of its readings
 */
public record Secret(List<HiddenFault> faults, long seed) {
  public Secret {
    faults = List.copyOf(faults);
  }
}
