package holdcurve.ui.window;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.SafeFile;
import holdcurve.ui.practice.PracticeResults;
import holdcurve.ui.practice.PracticeResults.Result;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.RecentJobs;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.Executor;
import javafx.collections.ListChangeListener;

/**
 * What the person at the window chose, kept from one start to the next in a small file. A file that
 * can't be read or written costs only the memory of it.
 */
final class Settings {
  private static final System.Logger LOG = System.getLogger(Settings.class.getName());
  private static final String THEME = "theme";
  private static final String TEXT = "text_px";
  private static final String UNIT = "pressure_unit";
  private static final String RECENT = "recent_job_";
  private static final String FILE = "_file";
  private static final String TITLE = "_title";
  private static final String DATE = "_date";
  private static final String STATE = "_state";
  private static final String PLUGINS = "plugin_folder";

  private final Path file;
  private final Executor background;

  /**
   * @param background writes the file, one write after the other
   */
  Settings(Path file, Executor background) {
    this.file = file;
    this.background = background;
  }

  /** Sets the desk up as it was left, and keeps watch on it. */
  void attach(Desk desk) {
    restore(desk, read());
    Runnable save = () -> save(desk);
    desk.looks().themeProperty().addListener((property, before, now) -> save.run());
    desk.looks().textSizeProperty().addListener((property, before, now) -> save.run());
    desk.jobs().pressures().unitProperty().addListener((property, before, now) -> save.run());
    desk.faults().folderProperty().addListener((property, before, now) -> save.run());
    desk.jobs()
        .recent()
        .all()
        .addListener((ListChangeListener<RecentJobs.Recent>) change -> save.run());
    restore(desk.practice());
    desk.practice().all().addListener((ListChangeListener<Result>) change -> save(desk.practice()));
  }

  private Path results() {
    return file.resolveSibling("practice-results.csv");
  }

  private void restore(PracticeLog practice) {
    if (Files.isRegularFile(results())) {
      try {
        practice.restore(PracticeResults.read(results()));
      } catch (InputException e) {
        LOG.log(Level.WARNING, "results of practice can't be read", e);
      }
    }
  }

  private void save(PracticeLog practice) {
    List<Result> now = List.copyOf(practice.all());
    background.execute(
        () -> {
          try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            PracticeResults.write(results(), now);
          } catch (IOException | InputException e) {
            LOG.log(Level.WARNING, "results of practice can't be kept", e);
          }
        });
  }

  private Properties read() {
    Properties kept = new Properties();
    if (Files.isRegularFile(file)) {
      try (Reader in = Files.newBufferedReader(file)) {
        kept.load(in);
      } catch (IOException | IllegalArgumentException e) {
        LOG.log(Level.INFO, "settings in " + file + " can't be read: " + e.getMessage());
      }
    }
    return kept;
  }

  private static void restore(Desk desk, Properties kept) {
    for (Theme theme : Theme.values()) {
      if (theme.name().equals(kept.getProperty(THEME))) {
        desk.looks().themeProperty().set(theme);
      }
    }
    for (PressureUnit unit : PressureUnit.values()) {
      if (unit.name().equals(kept.getProperty(UNIT))) {
        desk.jobs().pressures().unitProperty().set(unit);
      }
    }
    String size = kept.getProperty(TEXT, "");
    if (size.matches("[0-9]{1,3}")) {
      desk.looks().setTextSize(Integer.parseInt(size));
    }
    String folder = kept.getProperty(PLUGINS, "");
    if (!folder.isBlank() && desk.faults().folderProperty().get() == null) {
      desk.faults().folderProperty().set(Path.of(folder));
    }
    desk.jobs().recent().restore(recent(kept));
  }

  private static List<RecentJobs.Recent> recent(Properties kept) {
    List<RecentJobs.Recent> recent = new ArrayList<>();
    for (int i = 0; !kept.getProperty(RECENT + i + FILE, "").isBlank(); i++) {
      recent.add(
          new RecentJobs.Recent(
              Path.of(kept.getProperty(RECENT + i + FILE)),
              kept.getProperty(RECENT + i + TITLE, ""),
              kept.getProperty(RECENT + i + DATE, ""),
              kept.getProperty(RECENT + i + STATE, "")));
    }
    return recent;
  }

  private static void put(Properties now, List<RecentJobs.Recent> recent) {
    for (int i = 0; i < recent.size(); i++) {
      now.setProperty(RECENT + i + FILE, recent.get(i).file().toString());
      now.setProperty(RECENT + i + TITLE, recent.get(i).title());
      now.setProperty(RECENT + i + DATE, recent.get(i).date());
      now.setProperty(RECENT + i + STATE, recent.get(i).state());
    }
  }

  private void save(Desk desk) {
    Properties now = new Properties();
    now.setProperty(THEME, desk.looks().theme().name());
    now.setProperty(TEXT, Integer.toString(desk.looks().textSizeProperty().get()));
    now.setProperty(UNIT, desk.jobs().pressures().unit().name());
    Path folder = desk.faults().folderProperty().get();
    now.setProperty(PLUGINS, folder == null ? "" : folder.toString());
    put(now, desk.jobs().recent().all());
    background.execute(() -> write(now));
  }

  private void write(Properties now) {
    try {
      StringWriter text = new StringWriter();
      now.store(text, "Holdcurve: how the window was left");
      Files.createDirectories(file.toAbsolutePath().getParent());
      SafeFile.write(file, text.toString());
    } catch (IOException | InputException e) {
      LOG.log(Level.WARNING, "settings can't be kept in " + file, e);
    }
  }
}
