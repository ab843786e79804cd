package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.LogImport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Begins a job file and adds entries to it, each checked as the reader checks it and written in one
 * step. Every other entry stays as it stands; comments in the file are lost, and the old file stays
 * beside it as {@code name~}.
 */
public final class JobFile {
  private final Path file;

  private JobFile(Path file) {
    this.file = file;
  }

  /** The job file at a place, there or not. */
  public static JobFile at(Path file) {
    return new JobFile(file);
  }

  /**
   * Begins a job on a circuit that has a file. A circuit that lies too far off to be named is
   * copied beside the job.
   *
   * @param entries title and gauge
   * @throws InputException if a file of this name is there, or something can't be used
   */
  public Job begin(StatedEntry entries, Path circuitFile) {
    requireNew();
    CircuitReader.read(circuitFile);
    Placed circuit = Placed.of(file, circuitFile);
    return circuit.keptIf(() -> begin(entries, circuit.name()));
  }

  /**
   * Begins a job on a circuit in a few words, which gets a file of its own beside the job.
   *
   * @param outline of the circuit
   * @throws InputException if a file of this name is there, or something can't be used
   */
  public Job beginOutline(StatedEntry entries, StatedEntry outline) {
    requireNew();
    ObjectNode root = JsonFiles.object();
    root.put("format", CircuitReader.FORMAT);
    root.set("title", entries.node().path("title"));
    root.set("outline", outline.node());
    JsonPlace read = new JsonPlace(file.toString(), "", root, JsonLines.NONE);
    CircuitReader.read(outline.in(read, "outline"), "");
    String stem = JobWriter.stem(file);
    Placed circuit = Placed.written(file, stem + ".circuit.json", JsonFiles.print(root));
    return circuit.keptIf(() -> begin(entries, circuit.name()));
  }

  private void requireNew() {
    if (!file.toString().endsWith(JobWriter.ENDING)) {
      throw InputException.at(
          file.toString(),
          "",
          "the name of a job ends otherwise",
          "end it in " + JobWriter.ENDING + ", such as my-car" + JobWriter.ENDING);
    }
    if (Files.exists(file)) {
      throw InputException.at(
          file.toString(), "", "there is a file of this name", "choose another name");
    }
  }

  private Job begin(StatedEntry entries, String circuit) {
    ObjectNode root = JsonFiles.object();
    root.put("format", Job.FORMAT);
    root.setAll(entries.node());
    root.put("circuit", circuit);
    root.putArray("tests");
    return write(root, entries, "");
  }

  /**
   * Adds a hold test with its log. A log that lies too far off to be named is copied beside the
   * job.
   *
   * @param test everything but the log
   * @return what is to be said about the log
   * @throws InputException if job, log or test can't be used
   */
  public List<Message> addTest(StatedEntry test, Path logFile) {
    Circuit circuit = circuit();
    JsonPlace stated = test.in(new JsonPlace("", "", test.node(), JsonLines.NONE), "");
    stated.find("date").ifPresent(UpkeepReader::date);
    LogImport read = GaugeLogReader.read(logFile);
    Placed log = Placed.of(file, logFile);
    test.put("log", "", log.name());
    log.keptIf(() -> add("tests", test));
    return JobReader.understood(read, circuit);
  }

  /**
   * Adds something found out beside the gauge.
   *
   * @throws InputException if job or finding can't be used
   */
  public Job addFinding(StatedEntry finding) {
    return add(FindingReader.ENTRY, finding);
  }

  /**
   * Adds a repair that was done.
   *
   * @throws InputException if job or repair can't be used
   */
  public Job addRepair(StatedEntry repair) {
    return add("repairs", repair);
  }

  private Job add(String list, StatedEntry entry) {
    JobReader.readUnfinished(file);
    ObjectNode root = (ObjectNode) JsonFiles.read(file, "holdcurve-job", 1).node();
    ArrayNode entries = root.path(list).isArray() ? root.withArray(list) : root.putArray(list);
    entries.add(entry.node());
    return write(root, entry, list + "[" + (entries.size() - 1) + "]");
  }

  private Job write(ObjectNode root, StatedEntry entry, String path) {
    JsonPlace place = new JsonPlace(file.toString(), "", root, JsonLines.NONE);
    Job job = JobReader.readUnfinished(file, entry.in(place, path));
    SafeFile.write(file, JsonFiles.print(root));
    return job;
  }

  /** The circuit that a job file names. */
  public Circuit circuit() {
    return JobReader.readUnfinished(file).circuit();
  }
}
