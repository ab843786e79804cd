package holdcurve.ui.command;

import holdcurve.fault.FaultCatalogue;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that adds fault plugins. */
final class Plugins {
  @Option(
      names = "--plugins",
      paramLabel = "FOLDER",
      defaultValue = "${env:HOLDCURVE_PLUGINS}",
      description =
          "Also use the fault plugins in the jars of this folder. A jar is a program: name only a"
              + " folder whose jars you trust. To name one for good, set HOLDCURVE_PLUGINS; without"
              + " either, no plugin is loaded.")
  private Path folder;

  /** The folder named; null if none was. */
  Path folder() {
    return folder == null || folder.toString().isBlank() ? null : folder;
  }

  FaultCatalogue catalogue() {
    return FaultCatalogue.load(Optional.ofNullable(folder()));
  }
}
