package holdcurve.ui.window.job;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.ranking.Ranker;
import holdcurve.physics.network.SimulationException;
import holdcurve.record.job.Job;
import java.lang.System.Logger.Level;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** The ranking of the open job: worked out in the background, one at a time. */
public final class RankingModel {
  /** Same job, same answer: the window always draws the same random numbers. */
  private static final long SEED = 1;

  /** Ways kept in which each suspect may be the one. */
  private static final int DRAWS = 60;

  private static final System.Logger LOG = System.getLogger(RankingModel.class.getName());

  private final Supplier<Ranker> ranker;
  private final Executor background;
  private final Executor screen;
  private final Consumer<String> trouble;

  private final ComputedResult<Ranking> result;
  private final ReadOnlyObjectWrapper<Posterior> posterior = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
  private final ReadOnlyStringWrapper step = new ReadOnlyStringWrapper("");

  private final ReadOnlyObjectWrapper<Job> ranked = new ReadOnlyObjectWrapper<>();
  private final ObjectProperty<Suspect> chosen = new SimpleObjectProperty<>();

  private RankingRun run;

  /**
   * @param trouble told on the screen's thread, in a sentence, when a ranking fails
   * @param open the open job
   */
  RankingModel(
      Supplier<Ranker> ranker,
      Executor background,
      Executor screen,
      Consumer<String> trouble,
      ObservableValue<Job> open) {
    this.ranker = ranker;
    this.background = background;
    this.screen = screen;
    this.trouble = trouble;
    this.result = new ComputedResult<>(open);
  }

  /** Drops the ranking there is. */
  void forget() {
    cancel();
    result.forget();
    posterior.set(null);
    ranked.set(null);
    chosen.set(null);
  }

  /**
   * Ranks a job in the background.
   *
   * @param job what is ranked of it
   * @param open the open job as it is now
   */
  void start(Job job, Job open) {
    cancel();
    RankingRun started = new RankingRun(screen, this::progressed);
    run = started;
    progress.set(-1);
    step.set("Starting the ranking");
    busy.set(true);
    background.execute(() -> rank(job, open, started));
  }

  /** Stops the ranking under way, if any. */
  public void cancel() {
    if (run != null) {
      run.cancel();
      run = null;
      busy.set(false);
    }
  }

  private void rank(Job job, Job open, RankingRun started) {
    try {
      Posterior ranking = started.run(() -> ranker.get().believe(job, SEED, DRAWS, started));
      screen.execute(() -> ended(started, job, open, ranking, ""));
    } catch (CancellationException e) {
      screen.execute(() -> ended(started, job, open, null, ""));
    } catch (InputException | NoAnswerException | SimulationException e) {
      screen.execute(() -> ended(started, job, open, null, e.getMessage()));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, "ranking " + job.title(), e);
      screen.execute(
          () -> ended(started, job, open, null, "The ranking broke off: " + FailureText.plain(e)));
    }
  }

  private void progressed(RankingRun reporting) {
    if (reporting == run) {
      progress.set(reporting.share());
      step.set(reporting.what());
    }
  }

  private void ended(RankingRun finished, Job job, Job open, Posterior ranking, String sentence) {
    if (finished != run) {
      return;
    }
    run = null;
    busy.set(false);
    ranked.set(job);
    result.found(ranking == null ? null : ranking.ranking(), open);
    posterior.set(ranking);
    if (!sentence.isEmpty()) {
      trouble.accept(sentence);
    }
  }

  /** The ranking of the open job; null until it is there. */
  public ReadOnlyObjectProperty<Ranking> resultProperty() {
    return result.valueProperty();
  }

  /** Whether the open job has changed since it was ranked. */
  public ReadOnlyBooleanProperty outdatedProperty() {
    return result.outdatedProperty();
  }

  /** What further questions can be asked of; null until the ranking is there. */
  public ReadOnlyObjectProperty<Posterior> posteriorProperty() {
    return posterior.getReadOnlyProperty();
  }

  /** The job that the ranking is about; it may have changed since. Null until there is one. */
  public ReadOnlyObjectProperty<Job> rankedProperty() {
    return ranked.getReadOnlyProperty();
  }

  /** The suspect that is looked at, for all pages; null for none. */
  public ObjectProperty<Suspect> chosenProperty() {
    return chosen;
  }

  /** Whether a ranking is under way. */
  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Share of the ranking that is done [-], 0 to 1; negative while that is unknown. */
  public ReadOnlyDoubleProperty progressProperty() {
    return progress.getReadOnlyProperty();
  }

  /** What the ranking is working on. */
  public ReadOnlyStringProperty stepProperty() {
    return step.getReadOnlyProperty();
  }
}
