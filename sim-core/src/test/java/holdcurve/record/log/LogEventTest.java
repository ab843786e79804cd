package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.record.log.LogEvent.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    "smell of fuel, NOTE",
    "pump off at 2.1 bar, PUMP_STOP",
    "'hiss, then pump stopped', PUMP_STOP",
    "the pump was switched off, PUMP_STOP",
    "switched the pump on, PUMP_ON",
    "'pump on 20 s, pump off', PUMP_STOP",
    "injectors 50 %, INJECTORS",
    "engine idles, INJECTORS",
    "pump still running, NOTE",
    "pump not off yet, NOTE",
    "drop at the pump union fell off, NOTE",
    "note: pump stop, NOTE"
  })
  void takesTheMeaningFromTheWords(String text, Kind kind) {
    assertEquals(kind, LogEvent.of(text).kind());
  }

  @ParameterizedTest
  @CsvSource({
    "pump stop, PUMP_STOP",
    "Pump OFF, PUMP_STOP",
    "off, PUMP_STOP",
    "pump on, PUMP_ON",
    "the pump is running, PUMP_ON",
    "injectors open, INJECTORS",
    "engine started, INJECTORS",
    "clamp on return hose, CLAMP",
    "pump still running, NOTE",
    "drop at the pump union fell off, NOTE",
    "'pump stop, then a hiss', NOTE",
    "pump off at 2.1 bar, NOTE",
    "drip at injector 3 has stopped, NOTE",
    "smell in the engine bay, NOTE"
  })
  void aRemarkIsAnEventOnlyWhereItSaysNothingElse(String text, Kind kind) {
    assertEquals(kind, LogEvent.remark(text).kind());
  }

  @ParameterizedTest
  @ValueSource(strings = {"pump stop, then a hiss", "note: pump stop", "drip at injector 3", "x"})
  void aRemarkComesBackAsARemark(String text) {
    LogEvent remark = LogEvent.remark(text);
    assertEquals(remark, LogEvent.of(remark.written()));
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
