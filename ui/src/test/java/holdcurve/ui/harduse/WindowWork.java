package holdcurve.ui.harduse;

import holdcurve.ui.window.WindowLauncher;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.stage.Window;

/**
 * The window as the program opens it, worked by its own controls while the Java machine keeps a
 * record: a reading, a title and a theme, then the process halts as if it were killed; or the work
 * it left is brought back, saved, and the window closed.
 */
final class WindowWork {
  static final String JOB = "check-valve.job.json";

  /** Where saving puts the log that got a reading more. */
  static final String LOG = "check-valve-as-it-stands.csv";

  static final String TITLE = "Watched at its work (invented)";
  private static final long PATIENCE_MS = 300_000;

  private final Path in;
  private final Path kept;

  private WindowWork(Path in, Path kept) {
    this.in = in;
    this.kept = kept;
  }

  /**
   * @param arguments "work" or "bring back", folder with the scenarios, the window's own folder, a
   *     file for the control, a file for the record
   */
  public static void main(String[] arguments) throws IOException {
    WriteRecord record = WriteRecord.start();
    WindowWork work = new WindowWork(Path.of(arguments[1]), Path.of(arguments[2]));
    boolean first = arguments[0].equals("work");
    Thread hand = new Thread(first ? work::work : work::bringBack);
    hand.start();
    hand.setUncaughtExceptionHandler((thread, e) -> fail(e));
    if (first) {
      new Thread(() -> WindowLauncher.open(work.in.resolve(JOB), null)).start();
      join(hand);
    } else {
      WindowLauncher.open(null, null);
    }
    record.print(Path.of(arguments[4]), Path.of(arguments[3]));
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }

  private static void join(Thread hand) {
    try {
      hand.join();
    } catch (InterruptedException e) {
      fail(e);
    }
  }

  private static void fail(Throwable e) {
    e.printStackTrace(System.out);
    System.out.flush();
    Runtime.getRuntime().halt(1);
  }

  private void work() {
    until(
        () -> onScreen(() -> find("#job-title") instanceof TextField t && !t.getText().isEmpty()));
    choose("Hold tests");
    until(() -> onScreen(() -> find("#entry") != null));
    enter("#entry", "630 1.2");
    enter("#job-title", TITLE);
    choose("Light or _dark");
    until(
        () ->
            Files.exists(kept.resolve("window.properties"))
                && isKept(TITLE)
                && isKept("\t630.0\t"));
  }

  /** Whether the window's own folder has something with these words. */
  private boolean isKept(String words) {
    try (Stream<Path> all = Files.walk(kept.resolve("unsaved"))) {
      return all.filter(Files::isRegularFile)
          .filter(file -> !file.endsWith("lock"))
          .anyMatch(file -> OwnHome.read(file).contains(words));
    } catch (IOException | UncheckedIOException e) {
      return false;
    }
  }

  private void bringBack() {
    until(() -> onScreen(() -> button("Bring it back") != null));
    onScreen(
        () -> {
          button("Bring it back").fire();
          return true;
        });
    choose("_Save");
    until(() -> OwnHome.read(in.resolve(JOB)).contains(TITLE) && isKept("\nsaved"));
    choose("_Quit");
  }

  private static Node find(String selector) {
    return Window.getWindows().stream()
        .map(window -> window.getScene().getRoot().lookup(selector))
        .filter(node -> node != null)
        .findFirst()
        .orElse(null);
  }

  private static Button button(String text) {
    return Window.getWindows().stream()
        .flatMap(window -> window.getScene().getRoot().lookupAll(".button").stream())
        .filter(node -> node instanceof Button one && text.equals(one.getText()))
        .map(Button.class::cast)
        .findFirst()
        .orElse(null);
  }

  private static void enter(String field, String text) {
    onScreen(
        () -> {
          TextField line = (TextField) find(field);
          line.setText(text);
          line.fireEvent(new ActionEvent());
          return true;
        });
  }

  /** Presses an entry of the menu as soon as it can be pressed. */
  private static void choose(String entry) {
    until(
        () ->
            onScreen(
                () -> {
                  MenuItem found = entry(entry);
                  boolean ready = found != null && !found.isDisable();
                  if (ready) {
                    found.fire();
                  }
                  return ready;
                }));
  }

  private static MenuItem entry(String text) {
    MenuBar bar = (MenuBar) find(".menu-bar");
    for (Menu menu : bar == null ? List.<Menu>of() : bar.getMenus()) {
      for (MenuItem item : menu.getItems()) {
        if (text.equals(item.getText())) {
          return item;
        }
      }
    }
    return null;
  }

  private static <T> T onScreen(Callable<T> what) {
    FutureTask<T> task = new FutureTask<>(what);
    Platform.runLater(task);
    try {
      return task.get();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static void until(BooleanSupplier done) {
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (!holds(done)) {
      if (System.currentTimeMillis() > end) {
        throw new IllegalStateException("waited in vain");
      }
      try {
        Thread.sleep(50);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static boolean holds(BooleanSupplier done) {
    try {
      return done.getAsBoolean();
    } catch (IllegalStateException notYet) {
      return false;
    }
  }
}
