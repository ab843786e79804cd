package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.file.StatedEntry;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes that a joint was wet or dry. */
@Command(
    name = "joint",
    description = {
      "Notes that a joint was wet or dry under pressure.",
      "  holdcurve job joint my-car.job.json --wet --part check-valve --wiped",
      "  holdcurve job joint my-car.job.json --dry"
    },
    mixinStandardHelpOptions = true)
final class JobJointCommand implements Callable<Integer> {
  @Mixin private FindingArgument finding;

  @ArgGroup(multiplicity = "1")
  private Seen seen;

  @Option(
      names = "--part",
      paramLabel = "PART",
      description = "The part whose joint it was (without it: every joint was dry).")
  private String part;

  @Option(
      names = "--end",
      paramLabel = "POINT",
      description = "The connection point, where only one end was looked at.")
  private String end;

  @Option(names = "--wiped", description = "It was wiped dry and primed again before the look.")
  private boolean wiped;

  @Mixin private MomentOptions when;

  /** One of two. */
  static final class Seen {
    @Option(names = "--wet", description = "Fuel was seen.")
    private boolean wet;

    @Option(names = "--dry", description = "No fuel was seen.")
    private boolean dry;
  }

  @Override
  public Integer call() {
    if (seen.wet && part == null) {
      throw InputException.at(
          "command line", "--wet", "no part is named", "add --part and the part that was wet");
    }
    return finding.add(
        (circuit, unit) -> {
          StatedEntry look =
              new StatedEntry()
                  .put("kind", "", "joint")
                  .put("part", "--part", JobArgument.id(circuit, part))
                  .put("end", "--end", end)
                  .put("seen", "", seen.wet ? "wet" : "dry")
                  .put("wiped", "--wiped", wiped ? true : null);
          when.state(look, unit);
          return look;
        });
  }
}
