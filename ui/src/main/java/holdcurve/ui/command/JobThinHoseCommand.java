package holdcurve.ui.command;

import holdcurve.file.StatedEntry;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes whether there was fuel in the regulator's thin hose. */
@Command(
    name = "thin-hose",
    description = {
      "Notes whether there was fuel in the regulator's thin hose, or at its vent.",
      "  holdcurve job thin-hose my-car.job.json --dry"
    },
    mixinStandardHelpOptions = true)
final class JobThinHoseCommand implements Callable<Integer> {
  @Mixin private FindingArgument finding;

  @ArgGroup(multiplicity = "1")
  private Seen seen;

  @Mixin private MomentOptions when;

  /** One of two. */
  static final class Seen {
    @Option(names = "--fuel", description = "There was fuel in it.")
    private boolean fuel;

    @Option(names = "--dry", description = "There was none.")
    private boolean dry;
  }

  @Override
  public Integer call() {
    return finding.add(
        (circuit, unit) -> {
          StatedEntry look =
              new StatedEntry().put("kind", "", "reference-hose").put("fuel", "", seen.fuel);
          when.state(look, unit);
          return look;
        });
  }
}
