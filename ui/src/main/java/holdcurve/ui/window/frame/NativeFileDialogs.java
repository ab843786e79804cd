package holdcurve.ui.window.frame;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** The dialogs of the desktop. */
public final class NativeFileDialogs implements FileDialogs {
  private final Window owner;

  public NativeFileDialogs(Window owner) {
    this.owner = owner;
  }

  @Override
  public Optional<Path> chooseJob(Path near) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a job");
    chooser
        .getExtensionFilters()
        .addAll(
            new ExtensionFilter("Jobs (*.job.json)", "*.job.json"),
            new ExtensionFilter("All files", "*"));
    if (near != null && Files.isDirectory(near.toAbsolutePath().getParent())) {
      chooser.setInitialDirectory(near.toAbsolutePath().getParent().toFile());
    }
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }
}
