package holdcurve.common.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TitlesTest {
  @Test
  void aUsualTitleStaysAsItIs() {
    assertEquals("Six cylinders, damper", Titles.shown("Six cylinders, damper"));
    assertEquals("Six cylinders", Titles.shown(" Six\n\t cylinders "));
    assertEquals("x".repeat(120), Titles.shown("x".repeat(120)));
  }

  @Test
  void aPageIsCutAtTheEndOfAWord() {
    String shown = Titles.shown("loses pressure ".repeat(500));
    assertTrue(shown.endsWith(" pressure…") || shown.endsWith(" loses…"), shown);
    assertTrue(shown.length() <= 120, shown);
  }

  @Test
  void whatHasNoWordsIsCutBetweenSigns() {
    assertEquals("x".repeat(119) + "…", Titles.shown("x".repeat(5000)));
    String shown = Titles.shown("\uD83D\uDD27".repeat(5000));
    assertEquals(120, shown.codePointCount(0, shown.length()));
    assertEquals("\uD83D\uDD27".repeat(119) + "…", shown);
  }
}
