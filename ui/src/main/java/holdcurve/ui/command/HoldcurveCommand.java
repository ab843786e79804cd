package holdcurve.ui.command;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: what is common to all commands. */
@Command(
    name = "holdcurve",
    description =
        "Finds the leak in a pressurised petrol-injection circuit from the way its gauge falls.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    footer = {
      "",
      "'holdcurve help COMMAND' says more of one. Without a command the window opens.",
      "Exit codes: 0 done, 1 a fault of the program, 2 bad input, 3 no answer could be",
      "given, 130 stopped by Ctrl-C."
    })
public final class HoldcurveCommand implements Callable<Integer> {
  /** Exit code for a fault of the program itself. */
  public static final int BROKEN = 1;

  /** Exit code for input that can't be used. */
  public static final int BAD_INPUT = 2;

  /** Exit code when the work was done and no answer is possible. */
  public static final int NO_ANSWER = 3;

  /** Exit code of work that was interrupted, as shells have it for Ctrl-C. */
  public static final int STOPPED = 130;

  /** What is said then. */
  public static final String STOPPED_SENTENCE = "Stopped. No file was changed halfway.";

  private static final Map<String, Class<?>> COMMANDS = commands();

  @Spec private CommandSpec spec;

  /** In the order of the help. */
  private static Map<String, Class<?>> commands() {
    Map<String, Class<?>> commands = new LinkedHashMap<>();
    commands.put("job", JobCommand.class);
    commands.put("rank", RankCommand.class);
    commands.put("plan", PlanCommand.class);
    commands.put("whatif", WhatIfCommand.class);
    commands.put("check", CheckCommand.class);
    commands.put("refit", RefitCommand.class);
    commands.put("report", ReportCommand.class);
    commands.put("cases", CasesCommand.class);
    commands.put("simulate", SimulateCommand.class);
    commands.put("faults", FaultsCommand.class);
    commands.put("bench-sheet", BenchSheetCommand.class);
    commands.put("practise", PractiseCommand.class);
    commands.put("drop-test", DropTestCommand.class);
    commands.put("window", WindowCommand.class);
    commands.put("report-problem", ReportProblemCommand.class);
    commands.put("guide", GuideCommand.class);
    commands.put("about", AboutCommand.class);
    return commands;
  }

  @Override
  public Integer call() {
    return spec.subcommands().get("window").execute();
  }

  /** The command line with its writers, ready to execute. */
  public static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    return commandLine(COMMANDS, out, err);
  }

  /**
   * Likewise, but if arguments begin with the name of a command it is the only one there: reading
   * how the others are declared takes longer than some of them do.
   */
  public static int execute(PrintWriter out, PrintWriter err, String... arguments) {
    String name = arguments.length == 0 ? "" : arguments[0];
    return (COMMANDS.containsKey(name)
            ? commandLine(Map.of(name, COMMANDS.get(name)), out, err)
            : commandLine(out, err))
        .execute(arguments);
  }

  private static CommandLine commandLine(
      Map<String, Class<?>> commands, PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new HoldcurveCommand());
    commands.forEach(line::addSubcommand);
    if (commands.size() > 1) {
      line.addSubcommand(help());
    }
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(out);
    line.setErr(err);
    line.setParameterExceptionHandler((exception, args) -> WrongUse.tell(exception));
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          command.getErr().println(Failures.sentence(exception));
          return Failures.exitCode(exception);
        });
    return line;
  }

  private static CommandLine help() {
    CommandLine help = new CommandLine(new CommandLine.HelpCommand());
    help.getCommandSpec().usageMessage().header("Says how a command is used.");
    return help;
  }
}
