package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.input.InputException;
import holdcurve.common.text.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/**
 * Damaged logs are refused in a sentence or read with every line accounted for: as a reading, an
 * event, a heading or a line passed over. Nothing else may come out.
 */
class LogFuzzTest {
  private static final String PIECES =
      "0123456789.,;:|\t \n\r\"'#-+?~eExNan()[]/°psibarkMC_\u00a0\u2212\ufeff\u0085\u2028";

  /** One change: at a share of the length, take out some characters and put others in. */
  record Change(double at, int removed, String added) {
    String applied(String text) {
      int from = (int) (at * text.length());
      int to = Math.min(text.length(), from + removed);
      return text.substring(0, from) + added + text.substring(to);
    }
  }

  @Property(tries = 6000, seed = "1967")
  void accountsForEveryLine(
      @ForAll("samples") String sample, @ForAll("changes") List<Change> changes) {
    String text = sample;
    for (Change change : changes) {
      text = change.applied(text);
    }
    Statistics.label("outcome")
        .collect(isReadWithEveryLine(text) ? "read" : "refused")
        .coverage(c -> c.check("read").percentage(share -> share > 25));
  }

  private static boolean isReadWithEveryLine(String text) {
    try {
      assertEquals(dataLines(text), accounted(GaugeLogReader.read("damaged", text)));
      return true;
    } catch (InputException refused) {
      assertEquals("damaged", refused.source());
      return false;
    }
  }

  @Property(tries = 2000, seed = "1968")
  void readsOrRefusesAnyBytes(@ForAll("samples") String sample, @ForAll byte[] noise)
      throws IOException {
    byte[] bytes = (sample + new String(noise, "windows-1252")).getBytes("windows-1252");
    for (int i = 0; i < noise.length; i++) {
      bytes[Math.floorMod(noise[i] * 31 + i * 7, bytes.length)] = noise[i];
    }
    try {
      isReadWithEveryLine(TextFile.of("damaged", bytes, "save it as text").text());
    } catch (InputException refused) {
      assertEquals("damaged", refused.source());
    }
  }

  /** Lines that are neither blank nor comments, counted without the reader's own code. */
  private static int dataLines(String text) {
    String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
    int lines = 0;
    for (String line : plain.split("\r\n|\r|\n", -1)) {
      lines += line.matches("(?Us)[\\s\\p{Cntrl};,|\"]*") || comment(line) ? 0 : 1;
    }
    return lines;
  }

  private static boolean comment(String line) {
    return line.matches("(?Us)[\\s\\p{Cntrl};,|\"]*#.*");
  }

  private static int accounted(LogImport read) {
    GaugeLog log = read.log();
    long beside = log.readings().stream().filter(r -> r.event().isPresent()).count();
    return log.readings().size()
        + log.events().size()
        - (int) beside
        + read.passedOver().size()
        + read.headingLines();
  }

  @Provide
  Arbitrary<String> samples() throws IOException {
    Path folder = LogSamplesTest.FOLDER;
    return Arbitraries.of(
        LogSamplesTest.samples().stream().map(file -> text(folder.resolve(file))).toList());
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException notUtf8) {
      return "time_s;pressure_bar\n0;2,50\n30;2,48\n60;2,46\n";
    }
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    Arbitrary<String> added = Arbitraries.strings().withChars(PIECES).ofMaxLength(6);
    return Combinators.combine(
            Arbitraries.doubles().between(0, 1), Arbitraries.integers().between(0, 8), added)
        .as(Change::new)
        .list()
        .ofMaxSize(6);
  }
}
