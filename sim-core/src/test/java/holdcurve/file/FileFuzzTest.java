package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.whatif.PriceList;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.common.input.InputException;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLogReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;

/**
 * Every reader on damaged copies of the shipped scenarios and of the corpus: it refuses in one
 * sentence or keeps every line and entry; nothing else comes out, and it ends. Logs have a test of
 * their own besides, {@code LogFuzzTest}, which accounts for each of their lines.
 */
class FileFuzzTest {
  private static final String PIECES =
      "0123456789.,;:|\t \n\r\"'#-+?~eExNan()[]{}/\\°psibarkMCu_\u00a0\u2212\ufeff\u0000\u2028";
  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final FuzzSeeds SEEDS = FuzzSeeds.copied();

  /** At a share of the length, some characters are taken out and others put in. */
  record Change(double at, int removed, String added) {
    String applied(String text) {
      int from = (int) (at * text.length());
      int to = Math.min(text.length(), from + removed);
      return text.substring(0, from) + added + text.substring(to);
    }
  }

  /** At a share of its lines, one is taken out, doubled, or changes places with the next. */
  record LineChange(double at, int what) {
    String applied(String text) {
      List<String> lines = new java.util.ArrayList<>(text.lines().toList());
      int line = (int) (at * Math.max(0, lines.size() - 1));
      if (what == 0 && !lines.isEmpty()) {
        lines.remove(line);
      } else if (what == 1 && !lines.isEmpty()) {
        lines.add(line, lines.get(line));
      } else if (line + 1 < lines.size()) {
        java.util.Collections.swap(lines, line, line + 1);
      }
      return String.join("\n", lines) + "\n";
    }
  }

  @Property(tries = 6000, seed = "1969")
  void charactersChanged(
      @ForAll("seeds") FuzzSeeds.Seed seed, @ForAll("changes") List<Change> changes)
      throws IOException {
    String text = seed.text();
    for (Change change : changes) {
      text = change.applied(text);
    }
    check(seed, text);
  }

  @Property(tries = 3000, seed = "1970")
  void linesChanged(
      @ForAll("seeds") FuzzSeeds.Seed seed, @ForAll("lineChanges") List<LineChange> changes)
      throws IOException {
    String text = seed.text();
    for (LineChange change : changes) {
      text = change.applied(text);
    }
    check(seed, text);
  }

  /** One value of a JSON file, or one cell of a table, becomes an odd one. */
  @Property(tries = 6000, seed = "1973")
  void valuesChanged(
      @ForAll("seeds") FuzzSeeds.Seed seed, @ForAll("places") double at, @ForAll("odd") String odd)
      throws IOException {
    check(seed, OddValue.put(seed.text(), at, odd));
  }

  private static final Pattern BOTH =
      Pattern.compile(
          "(?i)(?:^|[;\\t|,])[^\\p{L}\\p{N};\\t|,]*(?:before|after)[^\\p{L}\\p{N};\\t|,]");

  private static void check(FuzzSeeds.Seed seed, String text) throws IOException {
    Path file = seed.damaged(text);
    boolean read = assertTimeoutPreemptively(PATIENCE, () -> isRead(seed.kind(), file, text));
    Statistics.label("outcome")
        .collect(read ? "read" : "refused")
        .coverage(c -> c.check("read").percentage(share -> share > 10));
  }

  private static boolean isRead(String kind, Path file, String text) {
    try {
      switch (kind) {
        case "bench" -> keepsAll(BenchSheetReader.read(file, BenchLimits.shipped()), file, text);
        case "drops" -> keepsAll(DropTestReader.read(file), file, text);
        case "prices" ->
            keepsAll(PriceListReader.read(file, HardFiles.car(), HardFiles.FAULTS), file, text);
        case "job" -> keepsAll(JobReader.read(file), text);
        case "log" -> {
          GaugeLogReader.readUnfinished(file);
          GaugeLogReader.read(file);
        }
        default -> HardFiles.read(kind, file);
      }
      return true;
    } catch (InputException refused) {
      isSentence(refused.getMessage());
      return false;
    }
  }

  private static void keepsAll(BenchSheet sheet, Path file, String text) {
    int kept =
        sheet.injectors().stream()
            .mapToInt(i -> (i.before().isPresent() ? 1 : 0) + (i.after().isPresent() ? 1 : 0))
            .sum();
    if (file.toString().endsWith(".json") || isSideBySide(text)) {
      kept = sheet.injectors().size();
    }
    assertEquals(FuzzCount.entries(file, text, "injector", "injectors"), kept);
  }

  /** One line holds both states then. */
  private static boolean isSideBySide(String text) {
    return text.lines()
        .filter(line -> !line.strip().startsWith("#"))
        .filter(line -> FuzzCount.names(line, "injector"))
        .findFirst()
        .filter(line -> BOTH.matcher(line).find())
        .isPresent();
  }

  private static void keepsAll(PriceList list, Path file, String text) {
    assertEquals(FuzzCount.entries(file, text, "price", "repairs"), list.offers().size());
  }

  private static void keepsAll(DropTest test, Path file, String text) {
    assertEquals(
        FuzzCount.entries(file, text, "injector", "readings"),
        test.firings().size() + test.idleFalls().size());
  }

  private static void keepsAll(Job job, String text) {
    assertEquals(FuzzCount.inList(text, "tests"), job.tests().size());
    assertEquals(FuzzCount.inList(text, "findings"), job.findings().size());
    assertEquals(FuzzCount.inList(text, "repairs"), job.upkeep().repairs().size());
  }

  private static void isSentence(String said) {
    assertTrue(said.endsWith("."), said);
    assertTrue(said.lines().allMatch(line -> line.length() < 4000 && line.endsWith(".")), said);
    assertTrue(said.lines().count() <= 11, said);
    assertFalse(said.chars().anyMatch(c -> c != '\n' && Character.isISOControl(c)), said);
  }

  @Provide
  Arbitrary<FuzzSeeds.Seed> seeds() {
    return Arbitraries.of(SEEDS.kinds())
        .flatMap(
            kind ->
                Arbitraries.frequencyOf(
                    Tuple.of(3, Arbitraries.of(SEEDS.sound(kind))),
                    Tuple.of(1, Arbitraries.of(SEEDS.of(kind)))));
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    Arbitrary<String> added = Arbitraries.strings().withChars(PIECES).ofMaxLength(6);
    return Combinators.combine(places(), Arbitraries.integers().between(0, 8), added)
        .as(Change::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<LineChange>> lineChanges() {
    return Combinators.combine(places(), Arbitraries.integers().between(0, 2))
        .as(LineChange::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  @Provide
  Arbitrary<Double> places() {
    return Arbitraries.doubles().between(0, 1);
  }

  @Provide
  Arbitrary<String> odd() {
    return Arbitraries.of(OddValue.ALL);
  }
}
