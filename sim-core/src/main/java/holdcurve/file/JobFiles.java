package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a job file that stands there already names, so that it can be kept where it still holds. */
final class JobFiles {
  private final Path file;
  private String notes;
  private String circuitName;
  private Job job;
  private final Map<String, String> logNames = new HashMap<>();
  private final Set<String> taken = new HashSet<>();

  private JobFiles(Path file) {
    this.file = file;
  }

  /** Reads the job at {@code file}; nothing is kept where there is none that can be read. */
  static JobFiles standing(Path file) {
    JobFiles files = new JobFiles(file);
    if (Files.isRegularFile(file)) {
      try {
        files.read();
      } catch (InputException e) {
        files.job = null;
      }
    }
    return files;
  }

  private void read() {
    JsonNode root = JsonFiles.read(file, "holdcurve-job", 1).node();
    notes = root.path("notes").isTextual() ? root.get("notes").textValue() : null;
    circuitName = root.path("circuit").textValue();
    root.path("tests")
        .forEach(
            test -> {
              if (test.path("log").isTextual()) {
                logNames.put(test.path("id").asText(), test.get("log").textValue());
              }
            });
    job = JobReader.readUnfinished(file);
  }

  Optional<String> notes() {
    return Optional.ofNullable(notes);
  }

  /** The name under which this very circuit stands there; empty where it doesn't. */
  Optional<String> circuit(Circuit wanted) {
    boolean same =
        job != null
            && wanted.title().equals(job.circuit().title())
            && wanted.fluid().id().equals(job.circuit().fluid().id())
            && sameParts(wanted.parts(), job.circuit().parts());
    return keep(same ? circuitName : null);
  }

  private static boolean sameParts(List<Part> some, List<Part> others) {
    if (!some.equals(others)) {
      return false;
    }
    for (int i = 0; i < some.size(); i++) {
      Part other = others.get(i);
      Part one = some.get(i);
      if (!one.kind().properties().stream().allMatch(p -> one.states(p) == other.states(p))) {
        return false;
      }
    }
    return true;
  }

  /** The name under which the log of a test stands there unchanged; empty where it doesn't. */
  Optional<String> log(HoldTest test) {
    boolean same =
        job != null
            && job.tests().stream()
                .anyMatch(old -> old.id().equals(test.id()) && sameLog(old.log(), test.log()));
    return keep(same ? logNames.get(test.id()) : null);
  }

  private static boolean sameLog(GaugeLog one, GaugeLog other) {
    return one.pumpStop() == other.pumpStop()
        && one.readings().equals(other.readings())
        && one.events().equals(other.events());
  }

  private Optional<String> keep(String name) {
    if (name != null) {
      taken.add(name);
    }
    return Optional.ofNullable(name);
  }

  /** A name that is this job's own: no other file and no other part of the job has it. */
  String free(String wanted) {
    int dot = wanted.indexOf('.');
    for (int i = 1; ; i++) {
      String name = i == 1 ? wanted : wanted.substring(0, dot) + "-" + i + wanted.substring(dot);
      if (!taken.contains(name) && (isOwn(name) || !Files.exists(file.resolveSibling(name)))) {
        taken.add(name);
        return name;
      }
    }
  }

  private boolean isOwn(String name) {
    return name.equals(circuitName) || logNames.containsValue(name);
  }
}
