package holdcurve.ui.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Begins a job and adds to it. */
@Command(
    name = "job",
    description = {
      "Begins a job, and adds tests, what you saw, repairs and prices to it.",
      "  holdcurve job new my-car.job.json --cylinders 6 --set 2bar",
      "  holdcurve job test my-car.job.json log.csv --clamp feed-hose",
      "  holdcurve job joint my-car.job.json --dry --wiped",
      "  holdcurve job repair my-car.job.json --part check-valve"
    },
    subcommands = {
      JobNewCommand.class,
      JobShowCommand.class,
      JobTestCommand.class,
      JobJointCommand.class,
      JobDropsCommand.class,
      JobDropTestCommand.class,
      JobThinHoseCommand.class,
      JobDrawOffCommand.class,
      JobRepairCommand.class,
      JobPriceCommand.class
    },
    footer = {
      "",
      "'holdcurve job COMMAND --help' says more of one.",
      "The old file stays beside the job, with a '~' behind its name."
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class JobCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return 0;
  }
}
