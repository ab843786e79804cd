package holdcurve.record.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Hold tests done in one go, on the circuit in one state.
 *
 * @param day when; empty if not written
 * @param tests at least one, in the order they were done
 */
public record Session(Optional<LocalDate> day, List<HoldTest> tests) {
  public Session {
    tests = List.copyOf(tests);
  }
}
