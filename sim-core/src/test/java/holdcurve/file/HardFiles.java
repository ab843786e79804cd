package holdcurve.file;

import static java.util.stream.Collectors.joining;

import holdcurve.advice.whatif.PriceList;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.LogImport;
import holdcurve.training.Exercise;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Broken and odd files in {@code src/test/resources/hard}, in a folder for each reader. What the
 * program says of each stands in {@code sentences.txt}: a line with its name behind "==", then
 * "refused: " and the one sentence, or what was understood and what was kept. All are invented.
 */
final class HardFiles {
  static final Path FOLDER =
      Path.of(System.getProperty("holdcurve.root"), "sim-core/src/test/resources/hard").normalize();
  private static final Path TABLE = FOLDER.resolve("sentences.txt");

  /** Faults that the price lists may name. */
  static final Set<String> FAULTS = Set.of("check-valve-seat", "gauge-tee", "injector-tip");

  /** Files that only serve others. */
  private static final Set<String> SERVING = Set.of("car.circuit.json", "log.csv", "kept.csv");

  private HardFiles() {}

  /** Names below {@link #FOLDER}, with '/' between folder and file. */
  static List<String> names() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !SERVING.contains(file.getFileName().toString()))
          .filter(file -> !file.getFileName().toString().startsWith("."))
          .filter(file -> !file.equals(TABLE))
          .filter(file -> !file.getParent().endsWith("job") || file.toString().endsWith(".json"))
          .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Name → what is said. */
  static Map<String, String> sentences() {
    try {
      Map<String, List<String>> said = new TreeMap<>();
      List<String> lines = List.of();
      for (String line : Files.readAllLines(TABLE)) {
        if (line.startsWith("== ")) {
          lines = new ArrayList<>();
          if (said.put(line.substring(3), lines) != null) {
            throw new IllegalStateException(line + " stands there twice");
          }
        } else if (!line.isBlank() && !said.isEmpty()) {
          lines.add(line);
        }
      }
      Map<String, String> joined = new TreeMap<>();
      said.forEach((name, all) -> joined.put(name, String.join("\n", all)));
      return joined;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What the program says of a file: the refusal, or what was understood and kept.
   *
   * @param kind folder of the corpus, which names the reader
   * @param folder left out of the sentences
   */
  static String outcome(String kind, Path file, Path folder) {
    try {
      return read(kind, file);
    } catch (InputException e) {
      return "refused: " + e.getMessage().replace(folder + "/", "");
    }
  }

  /** What is kept of a file, and what is said about it. */
  static String read(String kind, Path file) {
    return switch (kind) {
      case "circuit" -> kept(CircuitReader.read(file));
      case "job" -> kept(JobReader.read(file));
      case "log" -> kept(GaugeLogReader.read(file));
      case "bench" -> kept(BenchSheetReader.read(file, BenchLimits.shipped()));
      case "drops" -> kept(DropTestReader.read(file));
      case "prices" -> kept(PriceListReader.read(file, car(), FAULTS));
      case "exercise" -> kept(ExerciseReader.read(file));
      default -> throw new IllegalArgumentException(kind);
    };
  }

  static Circuit car() {
    return CircuitReader.read(FOLDER.resolve("job/car.circuit.json"));
  }

  private static String kept(Circuit circuit) {
    return "kept: " + circuit.title() + ", " + circuit.parts().size() + " parts";
  }

  private static String kept(Job job) {
    return lines(Message.inBar(job.understood()))
        + "kept: "
        + job.title()
        + ", readings "
        + job.tests().stream().map(t -> t.log().readings().size()).toList()
        + ", "
        + job.findings().size()
        + " findings, "
        + job.upkeep().repairs().size()
        + " repairs, priors "
        + job.priors();
  }

  private static String kept(LogImport read) {
    return lines(Message.inBar(read.understood()))
        + "kept: "
        + read.log().readings().size()
        + " readings";
  }

  private static String kept(BenchSheet sheet) {
    return lines(sheet.understood())
        + "kept: "
        + sheet.title()
        + ", "
        + sheet.injectors().size()
        + " injectors";
  }

  private static String kept(DropTest test) {
    return lines(test.understood())
        + "kept: "
        + test.firings().size()
        + " firings, "
        + test.idleFalls().size()
        + " without";
  }

  private static String kept(PriceList list) {
    return "kept: "
        + list.offers().stream()
            .map(o -> o.name() + " " + o.price() + " " + list.currency())
            .collect(joining(", "));
  }

  private static String kept(Exercise exercise) {
    return "kept: " + exercise.title() + ", " + exercise.secret().faults().size() + " hidden fault";
  }

  private static String lines(List<String> understood) {
    return understood.isEmpty() ? "" : String.join("\n", understood) + "\n";
  }
}
