package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DisplayCheckTest {
  private static final Optional<String> FINE = Optional.empty();

  @Test
  void linuxNeedsADisplay() {
    Optional<String> why = Optional.of(DisplayCheck.NO_DISPLAY);
    assertEquals(why, DisplayCheck.before("Linux", Map.of(), null));
    assertEquals(why, DisplayCheck.before("Linux", Map.of("DISPLAY", " "), null));
    assertEquals(FINE, DisplayCheck.before("Linux", Map.of("DISPLAY", ":0"), null));
    assertEquals(FINE, DisplayCheck.before("Linux", Map.of("WAYLAND_DISPLAY", "w-0"), null));
  }

  @Test
  void othersHaveNoSuchVariables() {
    assertEquals(FINE, DisplayCheck.before("Windows 11", Map.of(), null));
    assertEquals(FINE, DisplayCheck.before("Mac OS X", Map.of(), null));
  }

  @Test
  void aScreenlessPlatformNeedsNoDisplay() {
    assertEquals(FINE, DisplayCheck.before("Linux", Map.of(), "Monocle"));
  }

  /** What JavaFX 21 throws on Linux with a display that refuses. */
  @Test
  void aClosedDisplayIsNamed() {
    Throwable refused = new UnsupportedOperationException("Unable to open DISPLAY");
    assertEquals(DisplayCheck.DISPLAY_CLOSED, DisplayCheck.because(refused));
    assertEquals(
        DisplayCheck.DISPLAY_CLOSED, DisplayCheck.because(new RuntimeException("x", refused)));
  }

  /** What JavaFX 21 throws on Linux without GTK, and what the linker says of it. */
  @Test
  void missingGtkIsNamed() {
    assertEquals(
        DisplayCheck.NO_GTK,
        DisplayCheck.because(
            new UnsupportedOperationException("Unable to load glass GTK library.")));
    assertEquals(
        DisplayCheck.NO_GTK,
        DisplayCheck.because(
            new UnsatisfiedLinkError(
                "libglassgtk3.so: libgtk-3.so.0: cannot open shared object file")));
  }

  @Test
  void anythingElseIsQuotedInOneSentence() {
    String why = DisplayCheck.because(new RuntimeException("No toolkit found\nat line 1"));
    assertTrue(why.contains("No toolkit found") && why.endsWith("."), why);
    assertEquals(1, why.lines().count());
    assertTrue(DisplayCheck.because(new NoClassDefFoundError()).contains("NoClassDefFoundError"));
  }
}
