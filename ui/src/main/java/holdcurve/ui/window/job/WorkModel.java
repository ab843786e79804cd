package holdcurve.ui.window.job;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.physics.network.SimulationException;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Work in the background that a person may watch and stop. The frame shows what lasts longer than a
 * moment; the escape key stops it. Call it on the thread of the screen.
 */
public final class WorkModel {
  private static final System.Logger LOG = System.getLogger(WorkModel.class.getName());

  private final Executor background;
  private final Executor screen;
  private final Consumer<String> trouble;
  private final ObservableList<Item> running = FXCollections.observableArrayList();
  private final ObservableList<Item> shown = FXCollections.unmodifiableObservableList(running);

  WorkModel(Executor background, Executor screen, Consumer<String> trouble) {
    this.background = background;
    this.screen = screen;
    this.trouble = trouble;
  }

  /** One piece of work under way. */
  public static final class Item {
    private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(-1);
    private final ReadOnlyStringWrapper step;
    private final RankingRun run;
    private final boolean lasting;
    private boolean cancelled;
    private boolean broken;
    private Runnable whenBroken = () -> {};

    private Item(String what, boolean lasting, Executor screen) {
      this.lasting = lasting;
      step = new ReadOnlyStringWrapper(what);
      run =
          new RankingRun(
              screen,
              reporting -> {
                share.set(reporting.share());
                step.set(what + ": " + reporting.what());
              });
    }

    /** Stops it soon; what it would have found is dropped. */
    public void cancel() {
      cancelled = true;
      run.cancel();
    }

    /** What to do if it was stopped or failed; at once if it already has. */
    public Item ifBrokenOff(Runnable then) {
      whenBroken = then;
      if (broken) {
        then.run();
      }
      return this;
    }

    private void breakOff() {
      broken = true;
      whenBroken.run();
    }

    /** Share that is done [-], 0 to 1; negative while that is unknown. */
    public ReadOnlyDoubleProperty shareProperty() {
      return share.getReadOnlyProperty();
    }

    /** What is being done, in words. */
    public ReadOnlyStringProperty stepProperty() {
      return step.getReadOnlyProperty();
    }
  }

  /**
   * Starts work.
   *
   * @param what in words, such as "Looking for the next test"
   * @param work done in the background; it should ask its progress often whether to go on
   * @param done told the result on the thread of the screen, unless the work failed or was stopped
   */
  public <T> Item start(String what, Function<Progress, T> work, Consumer<T> done) {
    return start(new Item(what, false, screen), what, work, done);
  }

  /** Likewise, and {@link #cancelAll} leaves it alone. */
  <T> Item startLasting(String what, Function<Progress, T> work, Consumer<T> done) {
    return start(new Item(what, true, screen), what, work, done);
  }

  private <T> Item start(Item item, String what, Function<Progress, T> work, Consumer<T> done) {
    running.add(item);
    try {
      background.execute(() -> run(item, what, work, done));
    } catch (RejectedExecutionException e) {
      // the window is closing
      end(item, false, () -> {});
    }
    return item;
  }

  private <T> void run(Item item, String what, Function<Progress, T> work, Consumer<T> done) {
    try {
      T result = item.run.run(() -> work.apply(item.run));
      screen.execute(() -> end(item, true, () -> done.accept(result)));
    } catch (CancellationException e) {
      screen.execute(() -> end(item, false, () -> {}));
    } catch (InputException | NoAnswerException | SimulationException e) {
      screen.execute(() -> end(item, false, () -> trouble.accept(e.getMessage())));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, what, e);
      screen.execute(
          () ->
              end(item, false, () -> trouble.accept(what + " broke off: " + FailureText.plain(e))));
    }
  }

  private void end(Item item, boolean finished, Runnable then) {
    running.remove(item);
    if (!item.cancelled) {
      then.run();
    }
    if (item.cancelled || !finished) {
      item.breakOff();
    }
  }

  /** What is under way, oldest first. */
  public ObservableList<Item> running() {
    return shown;
  }

  /** Stops everything under way that isn't meant to last. */
  public void cancelAll() {
    List<Item> stopped = running.stream().filter(item -> !item.lasting).toList();
    stopped.forEach(Item::cancel);
    running.removeAll(stopped);
  }
}
