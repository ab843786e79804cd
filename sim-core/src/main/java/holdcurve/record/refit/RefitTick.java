package holdcurve.record.refit;

import java.time.LocalDate;

/**
 * That a step was done.
 *
 * @param date day it was done
 * @param by initials of who did it
 */
public record RefitTick(LocalDate date, String by) {
  /** Longest initials [characters]. */
  public static final int LONGEST = 12;

  public RefitTick {
    if (!isName(by)) {
      throw new IllegalArgumentException("initials '" + by + "' must be 1 to 12 characters");
    }
  }

  /** Whether {@code by} can stand for a person: 1 to 12 characters, no blanks at the ends. */
  public static boolean isName(String by) {
    return !by.isBlank() && by.equals(by.strip()) && by.length() <= LONGEST;
  }
}
