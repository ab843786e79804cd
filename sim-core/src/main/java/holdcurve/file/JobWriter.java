package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.number.Celsius;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLogWriter;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes {@code *.job.json} with its circuit and its logs beside it; {@link JobReader} reads the
 * same job back. Circuit and logs that stand there unchanged are left as they are and named again.
 * Each file is written in one step and leaves a backup; the job comes last, so that it never names
 * what isn't there yet.
 */
public final class JobWriter {
  /** How job files are named. */
  public static final String ENDING = ".job.json";

  private final Path file;
  private final Job job;
  private final JobFiles files;

  private final Disk disk;

  private JobWriter(Path file, Job job, Disk disk) {
    this.disk = disk;
    this.file = file;
    this.job = job;
    this.files = JobFiles.standing(file);
  }

  /**
   * @throws holdcurve.common.input.InputException if a file can't be written; the old ones are then
   *     still there
   */
  public static void write(Path file, Job job) {
    write(file, job, Disk.REAL);
  }

  static void write(Path file, Job job, Disk disk) {
    new JobWriter(file, job, disk).write();
  }

  private void write() {
    ObjectNode root = JsonFiles.object();
    root.put("format", Job.FORMAT);
    root.put("title", job.title());
    files.notes().ifPresent(notes -> root.put("notes", notes));
    root.put("circuit", circuit());
    addGauge(root.putObject("gauge"), job.gauge());
    ArrayNode tests = root.putArray("tests");
    job.tests().forEach(test -> addTest(tests.addObject(), test));
    FindingWriter.put(root, job.findings());
    if (!job.priors().isEmpty()) {
      ObjectNode priors = root.putObject("priors");
      job.priors().keySet().stream().sorted().forEach(id -> priors.put(id, job.priors().get(id)));
    }
    UpkeepWriter.put(root, job.upkeep());
    SafeFile.write(file, JsonFiles.print(root), disk);
  }

  private String circuit() {
    return files
        .circuit(job.circuit())
        .orElseGet(() -> add(stem() + ".circuit.json", CircuitWriter.json(job.circuit())));
  }

  static void addGauge(ObjectNode node, GaugeSpec gauge) {
    node.put("range_bar", CircuitWriter.plain(gauge.range() / 1e5));
    node.put("class_percent", CircuitWriter.plain(gauge.accuracyClass() * 100));
    node.put("resolution_bar", CircuitWriter.plain(gauge.resolution() / 1e5));
  }

  private void addTest(ObjectNode node, HoldTest test) {
    node.put("id", test.id());
    ArrayNode clamped = node.putArray("clamped");
    test.clamped().stream().sorted().forEach(clamped::add);
    if (!test.log().readings().isEmpty()) {
      node.put("log", log(test));
    }
    node.put("clamp_time_s", CircuitWriter.plain(test.clampTime()));
    node.put("prime_s", CircuitWriter.plain(test.primeTime()));
    test.fuelTemperature()
        .ifPresent(kelvins -> node.put("fuel_temp_C", CircuitWriter.plain(Celsius.of(kelvins))));
    putText(node, "date", test.date());
    putText(node, "notes", test.notes());
  }

  private static void putText(ObjectNode node, String name, String text) {
    if (!text.isBlank()) {
      node.put(name, text);
    }
  }

  private String log(HoldTest test) {
    return files
        .log(test)
        .orElseGet(
            () ->
                add(
                    stem() + "-" + plainName(test.id()) + ".csv",
                    GaugeLogWriter.write(test.log())));
  }

  private String add(String wanted, String text) {
    String name = files.free(wanted);
    SafeFile.write(file.resolveSibling(name), text, disk);
    return name;
  }

  private String stem() {
    return stem(file);
  }

  /** The name of a job without its ending. */
  static String stem(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }

  private static String plainName(String id) {
    String plain = id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return plain.replaceAll("^-|-$", "");
  }
}
