package holdcurve.ui.command;

import holdcurve.ui.about.Build;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The page for {@code man}, in roff, from the declarations of the commands. */
final class ManPage {
  private final StringBuilder page = new StringBuilder();

  private ManPage() {}

  /** One page for the program and all its commands. */
  static String of(CommandLine program) {
    ManPage man = new ManPage();
    man.write(program.getCommandSpec());
    return man.page.toString();
  }

  private void write(CommandSpec program) {
    String name = program.name();
    line(
        ".TH "
            + name.toUpperCase(java.util.Locale.ROOT)
            + " 1 \"\" \"Holdcurve "
            + Build.version()
            + "\" \"Holdcurve\"");
    section("NAME");
    text(name + " - " + String.join(" ", program.usageMessage().description()));
    section("SYNOPSIS");
    line(".B " + escaped(name));
    text("[COMMAND] [OPTION]... [FILE]");
    section("DESCRIPTION");
    described(program.usageMessage().footer());
    section("COMMANDS");
    commands(program).values().forEach(this::command);
    section("ENVIRONMENT");
    entry("HOLDCURVE_PLUGINS", "Folder of fault plugins, where --plugins names none.");
    section("FILES");
    entry("~/.holdcurve", "What the window keeps: settings, unsaved work, log.");
  }

  /** Without the command that explains the others. */
  private static Map<String, CommandSpec> commands(CommandSpec program) {
    Map<String, CommandSpec> commands = new LinkedHashMap<>();
    program
        .subcommands()
        .forEach(
            (name, line) -> {
              if (!line.getCommandSpec().helpCommand()) {
                commands.put(name, line.getCommandSpec());
              }
            });
    return commands;
  }

  private void command(CommandSpec command) {
    String name = command.qualifiedName();
    line(".SS " + escaped(name.substring(name.indexOf(' ') + 1)));
    described(command.usageMessage().description());
    command.positionalParameters().forEach(value -> entry(value.paramLabel(), value));
    command.options().stream()
        .filter(option -> !option.hidden() && !option.usageHelp() && !option.versionHelp())
        .forEach(option -> entry(named(option), option));
    commands(command).values().forEach(this::command);
  }

  private static String named(OptionSpec option) {
    String names = String.join(", ", option.names());
    return option.arity().max() > 0 ? names + " " + option.paramLabel() : names;
  }

  private void entry(String term, ArgSpec argument) {
    entry(term, Arrays.stream(argument.description()).collect(Collectors.joining(" ")));
  }

  private void entry(String term, String what) {
    line(".TP");
    line(".B " + escaped(term));
    text(what);
  }

  /** Lines that begin with spaces are examples and stay as they are. */
  private void described(String... lines) {
    for (String one : List.of(lines)) {
      if (one.startsWith("  ")) {
        line(".PP");
        line(".RS");
        line(".nf");
        text(one.strip());
        line(".fi");
        line(".RE");
      } else if (one.isEmpty()) {
        line(".PP");
      } else {
        text(one);
      }
    }
  }

  private void section(String title) {
    line(".SH " + title);
  }

  private void text(String text) {
    line((text.startsWith(".") || text.startsWith("'") ? "\\&" : "") + escaped(text));
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-");
  }

  private void line(String line) {
    page.append(line).append('\n');
  }
}
