package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GaugeLogTest {
  private static final List<Reading> READINGS =
      List.of(
          Reading.of(10, 1.0e5),
          new Reading(12, 2.5e5, 294, Optional.of(LogEvent.of("pump stop")), false),
          Reading.of(42, 2.4e5));

  @Test
  void holdStartsWithTheReadingAtThePumpStop() {
    GaugeLog log = new GaugeLog("invented", READINGS, 12);
    assertEquals(List.of(0.0, 30.0), log.hold().stream().map(Reading::time).toList());
    assertEquals(List.of(-2.0), log.buildUp().stream().map(Reading::time).toList());
    assertEquals(32, log.span());
    assertEquals(30, log.holdSpan());
    assertEquals(List.of(new TimedEvent(12, LogEvent.of("pump stop"))), log.events());
  }

  @Test
  void temperatureCountsInTheHoldOnly() {
    assertTrue(new GaugeLog("invented", READINGS, 12).hasTemperature());
    assertFalse(new GaugeLog("invented", READINGS, 13).hasTemperature());
  }

  @Test
  void movesToTheClockOfThePumpStop() {
    GaugeLog moved = new GaugeLog("invented", READINGS, 12).fromPumpStop();
    assertEquals(0, moved.pumpStop());
    assertEquals(0, moved.events().get(0).time());
    assertEquals(new GaugeLog("invented", READINGS, 12).hold(), moved.hold());
  }

  @Test
  void refusesReadingsOutOfOrderAndNumbersThatAreNone() {
    List<Reading> wrong = List.of(Reading.of(1, 1e5), Reading.of(0, 1e5));
    assertThrows(IllegalArgumentException.class, () -> new GaugeLog("invented", wrong, 0));
    assertThrows(IllegalArgumentException.class, () -> Reading.of(Double.NaN, 1e5));
    assertThrows(IllegalArgumentException.class, () -> Reading.of(0, Double.POSITIVE_INFINITY));
  }

  @Test
  void anEmptyLogSpansNothing() {
    GaugeLog log = new GaugeLog("invented", List.of(), 0);
    assertEquals(0, log.span());
    assertEquals(0, log.holdSpan());
  }
}
