package holdcurve.record.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time written with colons: {@code mm:ss}, {@code mm:ss.s}, {@code h:mm:ss}, or a date and {@code
 * h:mm:ss}.
 *
 * @param seconds value [s]; with a date, seconds since the start of 1970 on the log's own clock
 * @param form how it was written, for the user
 */
record ClockTime(double seconds, String form) {
  private static final Pattern SHAPE =
      Pattern.compile(
          "(?:(\\d{4}-\\d\\d-\\d\\d)[T ]+)?([+-]?)(?:(\\d{1,4}):)?(\\d{1,4}):(\\d\\d?)(?:[.,](\\d{0,9}))?Z?");

  static boolean hasColon(String cell) {
    return cell.indexOf(':') > 0;
  }

  /**
   * @param hoursFirst whether two numbers are hours and minutes, as a heading {@code h:mm} says
   * @return empty where the cell isn't such a time, or has 60 or more seconds
   */
  static Optional<ClockTime> parse(String cell, boolean hoursFirst) {
    Matcher m = SHAPE.matcher(cell.replace('−', '-'));
    if (!m.matches() || m.group(1) != null && m.group(3) == null) {
      return Optional.empty();
    }
    double last = Double.parseDouble(m.group(5) + "." + (m.group(6) == null ? "" : m.group(6)));
    int middle = Integer.parseInt(m.group(4));
    if (last >= 60 || m.group(3) != null && middle >= 60) {
      return Optional.empty();
    }
    int hours = m.group(3) == null ? 0 : Integer.parseInt(m.group(3));
    boolean hoursOnly = hoursFirst && m.group(3) == null;
    double size = hoursOnly ? middle * 3600.0 + last * 60 : hours * 3600.0 + middle * 60.0 + last;
    return dated(m.group(1), m.group(2).equals("-") ? -size : size, formOf(m, hoursOnly));
  }

  private static String formOf(Matcher m, boolean hoursOnly) {
    if (m.group(1) != null) {
      return "date and clock";
    }
    return hoursOnly ? "h:mm" : m.group(3) == null ? "mm:ss" : "h:mm:ss";
  }

  private static Optional<ClockTime> dated(String date, double seconds, String form) {
    if (date == null) {
      return Optional.of(new ClockTime(seconds, form));
    }
    try {
      long day = LocalDate.parse(date).toEpochDay();
      return Optional.of(new ClockTime(day * 86400.0 + seconds, form));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
