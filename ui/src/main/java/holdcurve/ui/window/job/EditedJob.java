package holdcurve.ui.window.job;

import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * A job that is changed: as it is now, as it began, as it stands in its file, and the way back,
 * which leads also to the job before if that one was left unsaved.
 */
final class EditedJob {
  /** One job taken up, from then until it is left. */
  static final class Sitting {
    private final Job begun;
    private final boolean example;
    private Path file;
    private Job standing;

    private Sitting(Job begun, Path file, Job standing, boolean example) {
      this.begun = begun;
      this.file = file;
      this.standing = standing;
      this.example = example;
    }

    /**
     * A job of the user's own.
     *
     * @param fileOrNull where saving goes
     * @param standsOrNull what that file has; null for another or none
     */
    static Sitting own(Job begun, Path fileOrNull, Job standsOrNull) {
      return new Sitting(begun, fileOrNull, standsOrNull, false);
    }

    /** A shipped job, which has no file of the user's yet. */
    static Sitting example(Job begun) {
      return new Sitting(begun, null, begun, true);
    }

    Path file() {
      return file;
    }
  }

  private record State(Sitting sitting, Job job) {}

  private final History<State> history = new History<>();
  private final ReadOnlyObjectWrapper<Job> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> takenUp = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> standing = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyBooleanWrapper example = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper undoName = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper redoName = new ReadOnlyStringWrapper("");
  private final BooleanBinding unsaved =
      Bindings.createBooleanBinding(() -> job.get() != standing.get(), job, standing);
  private Sitting sitting;

  /**
   * Begins with another job. If what there was is unsaved, the way back leads there; else what was
   * done before can't be taken back any more.
   */
  void take(Sitting next) {
    State before = new State(sitting, now());
    boolean back = hasSomethingToLose();
    if (!back) {
      history.clear();
    }
    if (back) {
      history.add("opening another job", "", before, new State(next, next.begun));
    }
    turnTo(new State(next, next.begun));
  }

  private void turnTo(State state) {
    boolean other = sitting != state.sitting();
    sitting = state.sitting();
    standing.set(sitting.standing);
    job.set(state.job());
    file.set(sitting.file);
    example.set(sitting.example && sitting.file == null);
    showHistory();
    if (other) {
      takenUp.set(sitting.begun);
    }
  }

  /** Whether leaving the job now would leave something that the user put in and no file has. */
  boolean hasSomethingToLose() {
    return now() != null
        && unsaved.get()
        && (now() != sitting.begun || !JobEdits.isBlank(sitting.begun));
  }

  /** It stands in its file like this. */
  void stands(Job saved, Path path) {
    sitting.standing = saved;
    sitting.file = path;
    standing.set(saved);
    file.set(path);
    example.set(false);
  }

  /**
   * @param what in words that go after "Undo"
   * @param page on which it is done; empty for one that all pages show
   * @return whether anything is different now
   */
  boolean alter(String what, String page, UnaryOperator<Job> change) {
    Job before = job.get();
    Job after = before == null ? null : change.apply(before);
    if (after == null || after.equals(before)) {
      return false;
    }
    history.add(what, page, new State(sitting, before), new State(sitting, after));
    job.set(after);
    showHistory();
    return true;
  }

  /** Takes the last change back; false where there is none. */
  boolean undo() {
    return go(history.undo());
  }

  /** Does it again; false where there is none. */
  boolean redo() {
    return go(history.redo());
  }

  private boolean go(State stateOrNull) {
    if (stateOrNull != null) {
      turnTo(stateOrNull);
    }
    return stateOrNull != null;
  }

  private void showHistory() {
    undoName.set(history.undoName());
    redoName.set(history.redoName());
  }

  /** Where {@link #undo} would take something back; empty for nothing, or anywhere. */
  String undoPage() {
    return history.undoPage();
  }

  /** Where {@link #redo} would do something again; empty for nothing, or anywhere. */
  String redoPage() {
    return history.redoPage();
  }

  Job now() {
    return job.get();
  }

  /** The job taken up; null before there is one. */
  Sitting sitting() {
    return sitting;
  }

  ReadOnlyObjectWrapper<Job> jobProperty() {
    return job;
  }

  ReadOnlyObjectWrapper<Job> takenUpProperty() {
    return takenUp;
  }

  ReadOnlyObjectWrapper<Path> fileProperty() {
    return file;
  }

  ReadOnlyBooleanWrapper exampleProperty() {
    return example;
  }

  ReadOnlyStringWrapper undoNameProperty() {
    return undoName;
  }

  ReadOnlyStringWrapper redoNameProperty() {
    return redoName;
  }

  BooleanBinding unsaved() {
    return unsaved;
  }
}
