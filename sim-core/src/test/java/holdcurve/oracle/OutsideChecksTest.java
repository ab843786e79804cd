package holdcurve.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class OutsideChecksTest {
  private static final Path SHIPPED =
      Path.of(System.getProperty("holdcurve.root", ".."), "sim-core/docs/outside-checks.md");

  /** All but how much of a tolerance was used, which a run may change. */
  private static String withoutUse(String table) {
    return table.replaceAll("(?m)\\| [^|]+ \\|$", "|");
  }

  @Test
  void shippedTableIsThatOfTheTests() throws IOException {
    String shipped = Files.readString(SHIPPED);
    assertEquals(withoutUse(OutsideChecks.table()), withoutUse(shipped), OutsideChecks.RENEW);
    assertFalse(shipped.contains("not run"), OutsideChecks.RENEW);
  }
}
