package holdcurve.ui.command;

import holdcurve.ui.about.Build;
import holdcurve.ui.about.Library;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says which version this is, and what it is made of. */
@Command(
    name = "about",
    description = "Says which version this is, its licence, and the libraries in it.",
    mixinStandardHelpOptions = true)
final class AboutCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    out.println("Holdcurve " + Build.version() + ". Licence: " + Build.LICENCE + ".");
    out.println(Build.platform());
    out.println();
    out.println("Libraries in it, with their licences:");
    List<Library> libraries = Library.all();
    int width = libraries.stream().mapToInt(one -> named(one).length()).max().orElse(0);
    libraries.forEach(one -> out.printf("  %-" + width + "s  %s%n", named(one), one.licences()));
    out.flush();
    return 0;
  }

  private static String named(Library library) {
    return library.name() + " " + library.version();
  }
}
