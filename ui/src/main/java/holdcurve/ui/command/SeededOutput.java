package holdcurve.ui.command;

import picocli.CommandLine.Option;

/** The same for a result that chance has a part in. */
final class SeededOutput extends Output {
  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Seed of the random numbers; the same seed gives the same answer (default:"
              + " ${DEFAULT-VALUE}).")
  long seed;
}
