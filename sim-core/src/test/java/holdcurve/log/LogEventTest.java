package holdcurve.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.log.LogEvent.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogEventTest {
  @ParameterizedTest
  @CsvSource({
    "pump stop, PUMP_STOP",
    "PUMP_STOP, PUMP_STOP",
    "Pump switched off, PUMP_STOP",
    "stop, PUMP_STOP",
    "pump on, PUMP_ON",
    "fuel pump running, PUMP_ON",
    "clamp on return hose, CLAMP",
    "pumped the brake pedal on the way, NOTE",
    "smell of fuel, NOTE"
  })
  void takesTheMeaningFromTheWords(String text, Kind kind) {
    assertEquals(kind, LogEvent.of(text).kind());
  }

  @Test
  void keepsTheWordsOnOneLine() {
    assertEquals("pump stop now", LogEvent.of(" pump\n stop\t\u00a0now ").text());
  }

  @Test
  void needsWords() {
    assertThrows(IllegalArgumentException.class, () -> LogEvent.of(" \n"));
  }
}
