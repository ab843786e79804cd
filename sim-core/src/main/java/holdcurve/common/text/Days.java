package holdcurve.common.text;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Days as they are written: year, month and day as in 2026-04-11 (ISO 8601). */
public final class Days {
  private Days() {}

  /** Whether the text is a day that the calendar has. */
  public static boolean isDay(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
