package holdcurve.ui.window.frame;

import holdcurve.common.text.Titles;
import holdcurve.file.JobWriter;
import holdcurve.ui.window.job.RankingModel;
import java.nio.file.Path;
import java.util.Optional;

/** What the menu "File" does. */
final class FileActions {
  private final Desk desk;
  private final Runnable begin;
  private final Runnable quit;

  /**
   * @param begin shows where a new job is begun
   * @param quit closes the window
   */
  FileActions(Desk desk, Runnable begin, Runnable quit) {
    this.desk = desk;
    this.begin = begin;
    this.quit = quit;
  }

  void begin() {
    begin.run();
  }

  void open() {
    desk.dialogs().chooseJob(near()).ifPresent(desk.jobs()::open);
  }

  void save() {
    save(() -> {});
  }

  /**
   * @param then run once the job is saved; never if nobody says where to
   */
  void save(Runnable then) {
    if (near() == null) {
      saveAs(then);
    } else {
      desk.jobs().saveAs(near(), then);
    }
  }

  void saveAs() {
    saveAs(() -> {});
  }

  private void saveAs(Runnable then) {
    String title = Titles.shown(desk.jobs().jobProperty().get().title());
    String name = title.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    desk.dialogs()
        .saveJob(near(), name.replaceAll("^-|-$", "") + JobWriter.ENDING)
        .map(FileActions::named)
        .ifPresent(place -> desk.jobs().saveAs(place, then));
  }

  private static Path named(Path chosen) {
    String name = chosen.getFileName().toString();
    return name.endsWith(".json") ? chosen : chosen.resolveSibling(name + JobWriter.ENDING);
  }

  /** A plugin is a program: that is said before a folder is chosen. */
  void choosePlugins() {
    Optional<Path> folder = desk.dialogs().choosePlugins(desk.faults().folderProperty().get());
    folder.ifPresent(
        path -> {
          desk.faults().folderProperty().set(path);
          desk.jobs()
              .work()
              .start(
                  "Reading plugins",
                  progress -> desk.faults().catalogue(),
                  catalogue -> {
                    rankAgain();
                    if (!catalogue.problems().isEmpty()) {
                      desk.jobs().report(String.join(" ", catalogue.problems()));
                    }
                  });
        });
  }

  void dropPlugins() {
    desk.faults().folderProperty().set(null);
    rankAgain();
  }

  /** What was ranked with other faults is out of date. */
  private void rankAgain() {
    RankingModel ranking = desk.jobs().ranking();
    if (ranking.resultProperty().get() != null || ranking.busyProperty().get()) {
      desk.jobs().rank();
    }
  }

  /** A new job about a circuit of the user's own. */
  void beginWithCircuit() {
    desk.dialogs()
        .choose(FileKind.CIRCUIT, near())
        .ifPresent(file -> NamedFile.beginOn(desk, file));
  }

  /** What is not saved is asked for, and offered at the next start if it is left so. */
  void quit() {
    desk.jobs().leaveForGood(quit);
  }

  private Path near() {
    return desk.jobs().fileProperty().get();
  }
}
