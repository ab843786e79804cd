package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTimeTest {
  /** Seconds counted by hand; 1 January 1970 is the start of the dated clock. */
  @ParameterizedTest
  @CsvSource({
    "2:30, 150, mm:ss",
    "-0:05, -5, mm:ss",
    "−1:00, -60, mm:ss",
    "02:30.5, 150.5, mm:ss",
    "90:00, 5400, mm:ss",
    "1:02:03, 3723, h:mm:ss",
    "'0:00:10,25', 10.25, h:mm:ss",
    "1970-01-02 00:00:01, 86401, date and clock",
    "1970-01-02T00:00:01.5Z, 86401.5, date and clock"
  })
  void readsColons(String cell, double seconds, String form) {
    assertEquals(new ClockTime(seconds, form), ClockTime.parse(cell, false).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"1:30, 5400, h:mm", "1:30:00, 5400, h:mm:ss"})
  void twoNumbersAreHoursWhereTheHeadingSaysSo(String cell, double seconds, String form) {
    assertEquals(new ClockTime(seconds, form), ClockTime.parse(cell, true).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0:60", "1:60:00", "1:2:3:4", ":30", "1:", "1970-02-30 00:00:00", "a:b"})
  void refusesWhatIsNoTime(String cell) {
    assertTrue(ClockTime.parse(cell, false).isEmpty());
  }
}
