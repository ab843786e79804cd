package holdcurve.ui.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes what a shell and {@code man} know of the commands; the build calls it. */
public final class HelpFiles {
  private HelpFiles() {}

  /**
   * Begins.
   *
   * @param arguments the folder to write to
   */
  public static void main(String[] arguments) throws IOException {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    CommandLine program = HoldcurveCommand.commandLine(nowhere, nowhere);
    Path folder = Path.of(arguments[0]);
    write(folder.resolve("man/man1/holdcurve.1"), ManPage.of(program));
    write(folder.resolve("completion/holdcurve.bash"), AutoComplete.bash("holdcurve", program));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text.replace("\r\n", "\n"));
  }
}
