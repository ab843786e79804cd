package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResultFileTest {
  private static final String RANKING =
      "{\n  \"format\" : \"holdcurve-ranking/1\",\n  \"job\" : 1 }";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ \"format\": \"holdcurve-job/1\" } | a holdcurve-job",
        "{\"title\":\"a\"} | something else",
        "time_s,pressure_bar | something else",
        "# format: holdcurve-log/1 | something else",
        "# holdcurve-bench-report/1 | a holdcurve-bench-report",
        "my notes | something else"
      })
  void nothingElseIsReplaced(String there, String called) throws IOException {
    Path file = folder.resolve("file");
    Files.writeString(file, there);
    InputException thrown =
        assertThrows(InputException.class, () -> ResultFile.write(file, RANKING));
    assertEquals(
        file
            + ": "
            + called
            + " stands there, which a result must not replace; choose another name.",
        thrown.getMessage());
    assertEquals(there, Files.readString(file));
    assertFalse(Files.exists(folder.resolve("file~")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "\n", "{ \"format\": \"holdcurve-ranking/1\" }", "# holdcurve-ranking/2\na"})
  void anEarlierOneIs(String there) throws IOException {
    Path file = folder.resolve("file");
    Files.writeString(file, there);
    ResultFile.write(file, RANKING);
    assertEquals(RANKING, Files.readString(file));
    assertEquals(there, Files.readString(folder.resolve("file~")));
  }

  @Test
  void aNewOneIsMade() throws IOException {
    Path file = folder.resolve("file");
    ResultFile.write(file, RANKING);
    assertEquals(RANKING, Files.readString(file));
  }
}
