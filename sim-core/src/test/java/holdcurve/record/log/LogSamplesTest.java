package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample in {@code src/test/resources/log} has a file of the same name and the ending {@code
 * .expected}: the sentences that its import says and the log in canonical form, or the one refusal
 * behind "refused: ". All samples are invented.
 */
class LogSamplesTest {
  static final Path FOLDER =
      Path.of(System.getProperty("holdcurve.root"), "sim-core/src/test/resources/log");

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(Path::getFileName)
          .filter(file -> !file.toString().matches("\\..*|.*\\.expected"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void saysWhatItUnderstood(Path sample) throws IOException {
    Path expected = FOLDER.resolve(sample + ".expected");
    assertEquals(Files.readString(expected).strip(), outcome(FOLDER.resolve(sample)));
  }

  @Test
  void hasManySamples() throws IOException {
    assertTrue(samples().size() >= 60);
  }

  private static String outcome(Path sample) {
    try {
      LogImport read = GaugeLogReader.read(sample);
      String said = String.join("\n", Message.inBar(read.understood()));
      return said + "\n\n" + GaugeLogWriter.write(read.log()).strip();
    } catch (InputException e) {
      return "refused: " + e.getMessage().replace(FOLDER.toString() + "/", "");
    }
  }
}
