package holdcurve.ui.window.frame;

import holdcurve.file.CircuitReader;
import java.nio.file.Path;
import java.util.Locale;

/** Opens a file by what its name says it is. */
public final class NamedFile {
  private static final String CIRCUIT = ".circuit.json";

  private NamedFile() {}

  /** Opens a job, or begins one on a circuit. */
  public static void open(Desk desk, Path file) {
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(CIRCUIT)) {
      beginOn(desk, file);
    } else {
      desk.jobs().open(file);
    }
  }

  /** Begins a new job on a circuit. */
  static void beginOn(Desk desk, Path circuit) {
    desk.jobs()
        .work()
        .start(
            "Reading the circuit",
            progress -> CircuitReader.read(circuit),
            read -> EmptyState.begin(desk, read));
  }
}
