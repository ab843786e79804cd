package holdcurve.ui.window.holdtests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.job.PressureFormat;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EntryTest {
  private final PressureFormat pressures = new PressureFormat();

  private Entry read(String typed) {
    return Entry.parse(typed, pressures).orElseThrow();
  }

  @Test
  void aPressureAloneBelongsToNow() {
    assertEquals(new Entry(OptionalDouble.empty(), 1.85e5, false), read("1.85"));
    assertEquals(new Entry(OptionalDouble.empty(), 1.85e5, false), read(" 1,85 bar "));
    assertEquals(new Entry(OptionalDouble.empty(), 2e5, true), read("2?"));
  }

  @ParameterizedTest
  @CsvSource({
    "1:30 1.85, 90",
    "90 1.85, 90",
    "90s 1.85, 90",
    "0:07.5 1.85, 7.5",
    "12:00; 1.85, 720"
  })
  void aTimeMayStandBeforeIt(String typed, double seconds) {
    assertEquals(new Entry(OptionalDouble.of(seconds), 1.85e5, false), read(typed));
  }

  @Test
  void pressuresAreInTheUnitShown() {
    pressures.unitProperty().set(PressureUnit.KPA);
    assertEquals(1.85e5, read("185").pressure(), 1e-6);
    pressures.unitProperty().set(PressureUnit.PSI);
    assertEquals(29 * 6894.757, read("29").pressure(), 1e-6);
    assertEquals("29.0 psi", pressures.text(29 * 6894.757));
    assertEquals(1.85e5, read("1.85 bar").pressure(), 1e-6);
    assertEquals(1.85e5, read("185 kPa").pressure(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "1:75 1.85", "1.85 later", "-1", "1..2", "1:30"})
  void whatIsNoReadingIsRefused(String typed) {
    assertEquals(Optional.empty(), Entry.parse(typed, pressures));
  }

  @Test
  void timesAreShownAsTheyAreTyped() {
    for (double seconds : new double[] {0, 7.5, 59.9, 60, 90, 725, 5999}) {
      assertEquals(seconds, Entry.seconds(Entry.clock(seconds)).orElseThrow(), 1e-9);
    }
    assertEquals("1:30", Entry.clock(90));
    assertEquals("−0:12.5", Entry.clock(-12.5));
    assertTrue(Entry.seconds("1:2:3").isEmpty());
  }
}
