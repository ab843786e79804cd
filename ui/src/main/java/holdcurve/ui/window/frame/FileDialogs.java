package holdcurve.ui.window.frame;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person for files. */
public interface FileDialogs {
  /**
   * Asks which job to open.
   *
   * @param near file whose folder is shown first; null for no wish
   * @return empty if the person thought better of it
   */
  Optional<Path> chooseJob(Path near);
}
