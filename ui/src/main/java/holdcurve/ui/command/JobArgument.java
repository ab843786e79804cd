package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PartName;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobFile;
import holdcurve.file.JobLock;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The job that something is added to. */
final class JobArgument {
  @Parameters(paramLabel = "JOB", description = "The job (*.job.json).")
  private Path file;

  @Mixin private Units units;

  Path file() {
    return file;
  }

  JobFile edited() {
    return JobFile.at(file);
  }

  /** The unit of what is typed and printed. */
  PressureUnit unit() {
    return units.ofJob(file);
  }

  /** Changes the job while nobody else does. */
  <T> T locked(Supplier<T> change) {
    return locked(file, change);
  }

  /** Changes a job while nobody else does. */
  static <T> T locked(Path file, Supplier<T> change) {
    JobLock lock =
        JobLock.of(file)
            .orElseThrow(
                () ->
                    InputException.at(
                        file.toString(),
                        "",
                        "a window works on this job",
                        "do it there, or close the window first"));
    try {
      return change.get();
    } finally {
      lock.close();
    }
  }

  /** The id of the part that people call so; what was typed if there is none. */
  static String id(Circuit circuit, String typedOrNull) {
    return circuit.parts().stream()
        .map(Part::id)
        .filter(id -> typedOrNull != null && PartName.of(id).equals(PartName.of(typedOrNull)))
        .findFirst()
        .orElse(typedOrNull);
  }

  /** Likewise for several. */
  static List<String> ids(Circuit circuit, List<String> typed) {
    return typed.stream().map(one -> id(circuit, one)).toList();
  }
}
