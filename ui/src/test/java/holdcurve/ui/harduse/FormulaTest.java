package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.text.SpreadsheetText;
import holdcurve.ui.command.HoldcurveCommand;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A spreadsheet takes a cell that begins with one of these signs for a formula: OWASP, "CSV
 * Injection" (=, +, -, @, tab, carriage return).
 */
class FormulaTest {
  private static final Path SHEET =
      Path.of(System.getProperty("holdcurve.root"), "scenarios/bench/six-before-and-after.csv");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@A1", "\t=1", "\r=1", "\n=1", " =1", "'=1", "＝1"})
  void isShownAsText(String typed) {
    String written = SpreadsheetText.harmless(typed);
    assertEquals("'" + typed, written);
    assertEquals(typed, SpreadsheetText.original(written));
    assertEquals(written.length() + 1, SpreadsheetText.harmless(written).length());
  }

  @Test
  void nameOfAnInjectorBecomesNoFormula() throws Exception {
    String formula = "=HYPERLINK(A1)";
    Path sheet = folder.resolve("sheet.csv");
    Path table = folder.resolve("table.csv");
    String hostile = Files.readString(SHEET).replaceAll("(?m)^3,", formula + ",");
    Files.writeString(sheet, hostile);
    StringWriter said = new StringWriter();
    int code =
        HoldcurveCommand.commandLine(new PrintWriter(said), new PrintWriter(said))
            .execute("bench-sheet", sheet.toString(), "--csv", table.toString());
    assertEquals(0, code, said::toString);
    String written = Files.readString(table);
    assertTrue(written.contains("'" + formula), written);
    assertFalse(written.replace("'" + formula, "").contains(formula), written);
  }
}
