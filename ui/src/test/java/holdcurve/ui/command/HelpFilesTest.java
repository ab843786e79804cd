package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What a shell and man are told is what the commands declare. */
class HelpFilesTest {
  private static final String COMPLETION = "completion/holdcurve.bash";

  @TempDir private Path folder;

  private static CommandLine program() {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    return HoldcurveCommand.commandLine(nowhere, nowhere);
  }

  @Test
  void everyCommandAndOptionIsInBoth() throws IOException {
    HelpFiles.main(new String[] {folder.toString()});
    String page = Files.readString(folder.resolve("man/man1/holdcurve.1"));
    String completion = Files.readString(folder.resolve(COMPLETION));
    program()
        .getSubcommands()
        .forEach(
            (name, command) -> {
              if (!command.getCommandSpec().helpCommand()) {
                assertTrue(page.contains(".SS " + name.replace("-", "\\-") + "\n"), name);
              }
              assertTrue(completion.contains("=(" + name + ")"), name);
              command.getCommandSpec().options().stream()
                  .filter(option -> !option.usageHelp() && !option.versionHelp())
                  .map(OptionSpec::longestName)
                  .forEach(
                      option -> {
                        assertTrue(page.contains(option.replace("-", "\\-")), option);
                        assertTrue(completion.contains(option), option);
                      });
            });
  }

  /** The macros of man(7) from groff, from memory. */
  @Test
  void thePageUsesNoMacroThatManLacks() {
    List<String> known = List.of("TH", "SH", "SS", "TP", "PP", "RS", "RE", "B", "nf", "fi");
    ManPage.of(program())
        .lines()
        .filter(line -> line.startsWith(".") || line.startsWith("'"))
        .forEach(line -> assertTrue(known.contains(line.substring(1).split(" ")[0]), line));
  }

  /** Bash itself completes a word. */
  @Test
  void bashCompletesACommand() throws Exception {
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
    HelpFiles.main(new String[] {folder.toString()});
    String ask =
        "source "
            + COMPLETION
            + "; COMP_WORDS=(holdcurve bench); COMP_CWORD=1;"
            + " _complete_holdcurve; echo \"${COMPREPLY[@]}\"";
    Process bash =
        new ProcessBuilder("/bin/bash", "-c", ask)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    assertTrue(bash.waitFor(60, TimeUnit.SECONDS));
    assertEquals("bench-sheet", new String(bash.getInputStream().readAllBytes()).strip());
  }
}
