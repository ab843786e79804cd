package holdcurve.ui.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {
  private record Pair(Role front, Role ground) {}

  /** Every pair that words are printed in. */
  private static final List<Pair> WORDS =
      List.of(
          new Pair(Role.TEXT, Role.PAPER),
          new Pair(Role.TEXT, Role.PANEL),
          new Pair(Role.TEXT, Role.CHOSEN),
          new Pair(Role.TEXT, Role.BAR_GROUND),
          new Pair(Role.MUTED, Role.PAPER),
          new Pair(Role.MUTED, Role.PANEL),
          new Pair(Role.MUTED, Role.CHOSEN),
          new Pair(Role.MUTED, Role.BAR_GROUND),
          new Pair(Role.MUTED, Role.BAND),
          new Pair(Role.ACCENT, Role.PAPER),
          new Pair(Role.ACCENT, Role.PANEL),
          new Pair(Role.ON_ACCENT, Role.ACCENT),
          new Pair(Role.ALERT, Role.ALERT_GROUND),
          new Pair(Role.SOUND, Role.SOUND_GROUND));

  /** Every pair of a shape that carries meaning and what lies beside it. */
  private static final List<Pair> SHAPES =
      List.of(
          new Pair(Role.MEASURED, Role.PAPER),
          new Pair(Role.MEASURED, Role.BAND),
          new Pair(Role.EXPECTED, Role.PAPER),
          new Pair(Role.EXPECTED, Role.BAND),
          new Pair(Role.BAR, Role.PANEL),
          new Pair(Role.BAR, Role.CHOSEN),
          new Pair(Role.BAR, Role.BAR_GROUND),
          new Pair(Role.GROUP, Role.PANEL));

  /** WCAG 2.1, success criterion 1.4.3 (level AA): words need 4.5:1. */
  @ParameterizedTest
  @EnumSource(Theme.class)
  void wordsStandOutFromTheirGround(Theme theme) {
    requireContrast(theme, WORDS, 4.5);
  }

  /** WCAG 2.1, success criterion 1.4.11 (level AA): graphics that carry meaning need 3:1. */
  @ParameterizedTest
  @EnumSource(Theme.class)
  void shapesStandOutFromWhatLiesBeside(Theme theme) {
    requireContrast(theme, SHAPES, 3);
  }

  /** WCAG 2.1, success criterion 1.4.6 (level AAA): words need 7:1. */
  @Test
  void highContrastGoesFarther() {
    requireContrast(Theme.HIGH_CONTRAST, WORDS, 7);
    requireContrast(Theme.HIGH_CONTRAST, SHAPES, 4.5);
    requireContrast(Theme.HIGH_CONTRAST, List.of(new Pair(Role.LINE, Role.PAPER)), 7);
  }

  private static void requireContrast(Theme theme, List<Pair> pairs, double least) {
    Palette palette = Palette.of(theme);
    for (Pair pair : pairs) {
      double contrast = palette.get(pair.front()).contrast(palette.get(pair.ground()));
      assertTrue(contrast >= least, () -> theme + " " + pair + ": " + contrast);
    }
  }

  /** WCAG 2.1: black on white is 21:1; #767676 is the lightest grey with 4.5:1 on white. */
  @Test
  void contrastIsThatOfTheGuidelines() {
    Rgb white = Rgb.of("#ffffff");
    assertEquals(21, Rgb.of("#000000").contrast(white), 1e-9);
    assertTrue(Rgb.of("#767676").contrast(white) >= 4.5);
    assertTrue(Rgb.of("#777777").contrast(white) < 4.5);
    assertEquals(1, white.contrast(white), 0);
  }

  @Test
  void onlySixDigitsMakeAColour() {
    assertThrows(IllegalArgumentException.class, () -> Rgb.of("#fff"));
    assertThrows(IllegalArgumentException.class, () -> Rgb.of("red"));
  }
}
