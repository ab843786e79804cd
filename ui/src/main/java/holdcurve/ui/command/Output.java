package holdcurve.ui.command;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Options that commands with a result share. */
final class Output {
  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Also write the result as JSON to this file.")
  Path json;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Seed of the random numbers; the same seed gives the same answer (default:"
              + " ${DEFAULT-VALUE}).")
  long seed;
}
