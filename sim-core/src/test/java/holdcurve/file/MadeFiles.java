package holdcurve.file;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Hard files that are too large or too odd to be kept, made when they are needed. */
final class MadeFiles {
  /** Makes one. */
  interface Maker {
    void make(Path file) throws IOException;
  }

  private static final String HEAD = "time_s,pressure_bar\n";
  private static final long MEGABYTE = 1 << 20;

  private MadeFiles() {}

  /** Name, with the reader's folder in front → how it is made. */
  static Map<String, Maker> all() {
    Map<String, Maker> all = new TreeMap<>();
    addLogs(all);
    addTables(all);
    addJson(all);
    all.put("log/a-folder.csv", Files::createDirectory);
    all.put("circuit/a-folder.circuit.json", Files::createDirectory);
    all.put("log/not-there.csv", file -> {});
    all.put("bench/not-there.csv", file -> {});
    all.put("job/not-there.job.json", file -> {});
    return all;
  }

  private static void addLogs(Map<String, Maker> all) {
    all.put("log/1000-columns.csv", text(wide(1000, "time_s,pressure_bar")));
    all.put("log/huge.csv", sparse(32 * MEGABYTE + 1));
    all.put(
        "log/million-lines.csv",
        file -> Files.writeString(file, HEAD + "0,2.5\n".repeat(1_000_001)));
    all.put("log/long-line.csv", text(HEAD + "0,2.5,\"" + "wet ".repeat(3000) + "\"\n"));
    all.put("log/one-endless-line.csv", text("0,2.5,".repeat(100_000)));
    all.put("log/many-seconds.csv", file -> Files.writeString(file, HEAD + rows(72_000)));
    all.put(
        "log/blanks-inside.csv", text(HEAD + ("1x" + " ".repeat(9000) + "z,2.5\n").repeat(300)));
    all.put("log/pumps.csv", text(HEAD + ("1,2.5," + "pump ".repeat(1900) + "\n").repeat(300)));
    all.put("log/figures.csv", text(("1".repeat(9000) + "x\n").repeat(300)));
    all.put("log/brackets.csv", text(("a" + " ".repeat(9000) + "(\n").repeat(300)));
  }

  private static void addTables(Map<String, Maker> all) {
    all.put("bench/1000-columns.csv", text("# pressure_bar: 3\n" + wide(1000, "injector,drops")));
    all.put("bench/huge.csv", sparse(8 * MEGABYTE + 1));
    all.put(
        "bench/many-rows.csv",
        text("# pressure_bar: 3\ninjector,static_mL_min\n" + "1,180\n".repeat(2001)));
    all.put(
        "bench/long-setting.csv", text("# title" + " ".repeat(5000) + "x\ninjector,spray\n1,1\n"));
    all.put("prices/thirteen.csv", text("name,part,price\n" + "valve,check-valve,45\n".repeat(13)));
    all.put("prices/huge.csv", sparse(8 * MEGABYTE + 1));
    all.put(
        "drops/many-firings.csv",
        text(
            "# gauge_resolution_bar: 0.05\n# fire_s: 0.25\n# wait_s: 8\n"
                + "injector,before_bar,after_bar\n"
                + "1,2.0,1.4\n2,2.0,1.4\n".repeat(1001)));
  }

  private static void addJson(Map<String, Maker> all) {
    String head = "{ \"format\": \"holdcurve-circuit/1\",\n  \"notes\": ";
    all.put("circuit/deep.circuit.json", text(head + "[".repeat(41) + "]".repeat(41) + " }\n"));
    all.put("circuit/deepest.circuit.json", text(head + "[".repeat(2_000_000)));
    all.put("circuit/huge.circuit.json", sparse(8 * MEGABYTE + 1));
    all.put(
        "circuit/long-number.circuit.json",
        text(
            "{ \"format\": \"holdcurve-circuit/1\",\n  \"outline\": { \"cylinders\": "
                + "4".repeat(1001)
                + " } }\n"));
    all.put(
        "circuit/long-name.circuit.json", text(head + "1, \"" + "x".repeat(60_000) + "\": 1 }\n"));
    all.put(
        "circuit/long-entry.circuit.json", text(head + "1, \"" + "x".repeat(5000) + "\": 1 }\n"));
    all.put(
        "circuit/301-parts.circuit.json",
        text(
            "{ \"format\": \"holdcurve-circuit/1\",\n  \"parts\": [\n"
                + list(301, i -> "{ \"kind\": \"rail\", \"id\": \"r" + i + "\", \"at\": \"rail\" }")
                + " ] }\n"));
    all.put(
        "circuit/3000-parts.circuit.json",
        text(
            "{ \"format\": \"holdcurve-circuit/1\",\n  \"parts\": [\n"
                + list(3000, i -> "1")
                + " ] }\n"));
    all.put("job/101-tests.job.json", MadeFiles::manyTests);
  }

  private static void manyTests(Path file) throws IOException {
    Files.copy(HardFiles.FOLDER.resolve("job/car.circuit.json"), file.resolveSibling("c.json"));
    Files.writeString(
        file,
        "{ \"format\": \"holdcurve-job/1\", \"title\": \"A job (invented)\", \"circuit\":"
            + " \"c.json\",\n"
            + "  \"tests\": [\n"
            + list(101, i -> "{ \"id\": \"t" + i + "\", \"log\": \"log.csv\" }")
            + " ] }\n");
  }

  private static String list(int count, java.util.function.IntFunction<String> item) {
    return IntStream.range(0, count).mapToObj(item).collect(joining(",\n"));
  }

  /** A heading line and three rows of so many columns. */
  private static String wide(int columns, String first) {
    String more = IntStream.range(2, columns).mapToObj(i -> ",c" + i).collect(joining());
    String row = "%d,2.4" + ",7".repeat(columns - 2) + "\n";
    return first + more + "\n" + row.formatted(0) + row.formatted(30) + row.formatted(60);
  }

  private static String rows(int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i -> String.format(Locale.ROOT, "%d.%d,%d.%04d\n", i / 10, i % 10, 2, 5000 - i / 20))
        .collect(joining());
  }

  private static Maker text(String text) {
    return file -> Files.writeString(file, text);
  }

  /** A file of so many zero bytes that takes no room. */
  private static Maker sparse(long bytes) {
    return file -> {
      try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
        open.setLength(bytes);
      }
    };
  }
}
