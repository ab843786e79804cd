package holdcurve.ui.window.frame;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** The dialogs of the desktop. */
public final class NativeFileDialogs implements FileDialogs {
  private static final ExtensionFilter JOBS =
      new ExtensionFilter("Jobs (*.job.json)", "*.job.json");
  private static final ExtensionFilter ALL = new ExtensionFilter("All files", "*");

  private final Window owner;
  private final Consumer<String> trouble;

  /**
   * @param trouble told in a sentence what went wrong
   */
  public NativeFileDialogs(Window owner, Consumer<String> trouble) {
    this.owner = owner;
    this.trouble = trouble;
  }

  @Override
  public Optional<Path> chooseJob(Path near) {
    FileChooser chooser = chooser("Open a job", near, JOBS, ALL);
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> saveJob(Path near, String name) {
    FileChooser chooser = chooser("Save the job", near, JOBS, ALL);
    chooser.setInitialFileName(near == null ? name : near.getFileName().toString());
    return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseLog(Path near) {
    ExtensionFilter logs = new ExtensionFilter("Gauge logs", "*.csv", "*.txt", "*.tsv");
    FileChooser chooser = chooser("Read a gauge log", near, logs, ALL);
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseExercise(Path near) {
    ExtensionFilter exercises = new ExtensionFilter("Exercises", "*.exercise.json");
    FileChooser chooser = chooser("Open an exercise", near, exercises, ALL);
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseExerciseFolder() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle("Folder for the exercises");
    return Optional.ofNullable(chooser.showDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseJobFolder() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle("Folder with jobs");
    return Optional.ofNullable(chooser.showDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseBenchSheet(Path near) {
    ExtensionFilter sheets =
        new ExtensionFilter("Bench sheets", "*.csv", "*.tsv", "*.txt", "*.bench.json");
    FileChooser chooser = chooser("Read a bench sheet", near, sheets, ALL);
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> choosePlugins(Path near) {
    Alert alert = new Alert(Alert.AlertType.CONFIRMATION, StepCautions.PLUGINS);
    alert.setHeaderText("Folder of fault plugins");
    alert.initOwner(owner);
    if (alert.showAndWait().filter(ButtonType.OK::equals).isEmpty()) {
      return Optional.empty();
    }
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle("Choose the folder with the jars");
    showFirst(near, chooser::setInitialDirectory);
    return Optional.ofNullable(chooser.showDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> choose(FileKind kind, Path near) {
    return Optional.ofNullable(chooser(kind, near).showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> save(FileKind kind, Path near, String name) {
    FileChooser chooser = chooser(kind, near);
    chooser.setInitialFileName(name);
    return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
  }

  @Override
  public void show(Path file) {
    String system = System.getProperty("os.name");
    List<String> command =
        system.startsWith("Windows")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", file.toString())
            : List.of(system.startsWith("Mac") ? "open" : "xdg-open", file.toString());
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      trouble.accept(file + " can't be opened from here: open it in a browser.");
    }
  }

  private static FileChooser chooser(FileKind kind, Path near) {
    return chooser(kind.title(), near, new ExtensionFilter(kind.name(), kind.patterns()), ALL);
  }

  private static FileChooser chooser(String title, Path near, ExtensionFilter... filters) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser.getExtensionFilters().addAll(filters);
    showFirst(
        near == null ? null : near.toAbsolutePath().getParent(), chooser::setInitialDirectory);
    return chooser;
  }

  private static void showFirst(Path folder, Consumer<File> chooser) {
    if (folder != null && Files.isDirectory(folder)) {
      chooser.accept(folder.toFile());
    }
  }
}
