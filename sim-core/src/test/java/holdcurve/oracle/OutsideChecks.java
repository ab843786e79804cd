package holdcurve.oracle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares by {@link OutsideCheck}, notes how much of each tolerance was used, and makes the table
 * of all of them. The notes lie in {@code target/outside-checks}, one file a test class, since
 * tests run in several Java machines; the last to end writes the whole table.
 */
public final class OutsideChecks {
  /** How to renew the shipped table. */
  static final String RENEW =
      "mvn -pl sim-core test; cp sim-core/target/outside-checks.md sim-core/docs/";

  private static final Path NOTES = Path.of("target/outside-checks");
  private static final Path TABLE = Path.of("target/outside-checks.md");
  private static final Map<String, Map<String, Double>> USED = new HashMap<>();

  /** A check and the class whose test makes it. */
  private record Row(Class<?> test, OutsideCheck check) {}

  private OutsideChecks() {}

  /** Compares with the number in front of the check's value. */
  public static void holds(String what, double actual) {
    Row row = row(what);
    compare(row, Double.parseDouble(row.check.value().split(" ")[0]), actual);
  }

  /** Compares with one of the check's values. */
  public static void holds(String what, double expected, double actual) {
    compare(row(what), expected, actual);
  }

  private static Row row(String what) {
    Class<?> test =
        StackWalker.getInstance(StackWalker.Option.RETAIN_CLASS_REFERENCE)
            .<Class<?>>walk(
                frames ->
                    frames
                        .<Class<?>>map(StackWalker.StackFrame::getDeclaringClass)
                        .filter(frame -> frame != OutsideChecks.class)
                        .findFirst()
                        .orElseThrow());
    return rowsOf(test)
        .filter(row -> row.check.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(test + " announces no check " + what));
  }

  private static Stream<Row> rowsOf(Class<?> test) {
    return Arrays.stream(test.getDeclaredMethods())
        .flatMap(method -> Arrays.stream(method.getAnnotationsByType(OutsideCheck.class)))
        .map(check -> new Row(test, check));
  }

  private static void compare(Row row, double expected, double actual) {
    OutsideCheck check = row.check;
    double most =
        check.unit().equals("%") ? check.tolerance() / 100 * Math.abs(expected) : check.tolerance();
    double used = Math.abs(actual - expected) / most;
    note(row, used);
    String found = "%s: %s expected, %s found".formatted(check.what(), expected, actual);
    assertTrue(check.misses().isEmpty() ? used <= 1 : used > 1, found);
  }

  private static synchronized void note(Row row, double used) {
    if (USED.isEmpty()) {
      Runtime.getRuntime().addShutdownHook(new Thread(OutsideChecks::writeTable));
    }
    Map<String, Double> ofTest = USED.computeIfAbsent(row.test.getName(), n -> new TreeMap<>());
    ofTest.merge(row.check.what(), used, Math::max);
    Properties notes = new Properties();
    ofTest.forEach((what, most) -> notes.setProperty(what, most.toString()));
    try {
      Files.createDirectories(NOTES);
      try (var out = Files.newBufferedWriter(NOTES.resolve(row.test.getName()))) {
        notes.store(out, null);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void writeTable() {
    try {
      Files.writeString(TABLE, table());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The table as it stands after what has run. */
  static String table() {
    StringBuilder text =
        new StringBuilder(
            """
            # Outside checks

            What the tests of `sim-core` compare with something outside this program. The build makes this table
            from the annotations `OutsideCheck` at the tests. The last column is the largest part of the tolerance
            that was used. A row in bold is missed and says why. A test fails once it no longer is.

            To renew it: `%s`

            No published value was found for the slope of a regulator, nor for the creep of a fuel hose.

            | what | source | value | tolerance | test | used |
            |---|---|---|---|---|---|
            """
                .formatted(RENEW));
    for (Row row : rows()) {
      text.append(line(row)).append('\n');
    }
    return text.toString();
  }

  private static List<Row> rows() {
    Path classes = Path.of("target/test-classes");
    try (Stream<Path> files = Files.walk(classes)) {
      List<Row> rows = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith("Test.class")).toList()) {
        String name = classes.relativize(file).toString().replace(".class", "");
        Class<?> test = Class.forName(name.replaceAll("[/\\\\]", "."));
        rows.addAll(rowsOf(test).toList());
      }
      rows.sort(
          Comparator.comparing((Row row) -> row.test.getName())
              .thenComparing(row -> row.check.what()));
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String line(Row row) {
    OutsideCheck check = row.check;
    String what =
        check.misses().isEmpty()
            ? check.what()
            : "**" + check.what() + ": missed, " + check.misses() + "**";
    String tolerance = "± %s %s".formatted(digits(check.tolerance()), check.unit()).strip();
    return Stream.of(
            what, check.source(), check.value(), tolerance, row.test.getSimpleName(), used(row))
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static String digits(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : Double.toString(value).replace(".0E", "e");
  }

  private static String used(Row row) {
    Path file = NOTES.resolve(row.test.getName());
    Properties notes = new Properties();
    if (Files.exists(file)) {
      try (var in = Files.newBufferedReader(file)) {
        notes.load(in);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    String used = notes.getProperty(row.check.what());
    return used == null
        ? "not run"
        : String.format(Locale.ROOT, "%.0f %%", 100 * Double.parseDouble(used));
  }
}
