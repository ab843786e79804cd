package holdcurve.ui.command;

import holdcurve.file.ResultFile;
import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The result as a file for other programs. */
class Output {
  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Also write the result as JSON to this file.")
  private Path json;

  /** Whether the result is asked for as a file. */
  boolean isAsked() {
    return json != null;
  }

  /** Writes the result if that was asked for. */
  void write(Supplier<String> result) {
    if (json != null) {
      ResultFile.write(json, result.get());
    }
  }
}
