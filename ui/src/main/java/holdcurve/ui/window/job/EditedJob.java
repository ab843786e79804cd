package holdcurve.ui.window.job;

import holdcurve.job.Job;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;

/** A job that is changed: as it is now, as it began, as it stands in its file, and the way back. */
final class EditedJob {
  private final History<Job> history = new History<>();
  private final ReadOnlyObjectWrapper<Job> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> takenUp = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> standing = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper undoName = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper redoName = new ReadOnlyStringWrapper("");
  private final BooleanBinding unsaved =
      Bindings.createBooleanBinding(() -> job.get() != standing.get(), job, standing);

  /**
   * Begins with another job; what was done before can't be taken back any more.
   *
   * @param standsOrNull what its file has; null for another or none
   */
  void take(Job taken, Job standsOrNull) {
    history.clear();
    standing.set(standsOrNull);
    job.set(taken);
    showHistory();
    takenUp.set(taken);
  }

  /** It stands in its file like this. */
  void stands(Job saved) {
    standing.set(saved);
  }

  /**
   * @param what in words that go after "Undo"
   * @return whether anything is different now
   */
  boolean alter(String what, UnaryOperator<Job> change) {
    Job before = job.get();
    Job after = before == null ? null : change.apply(before);
    if (after == null || after.equals(before)) {
      return false;
    }
    history.add(what, before, after);
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

  private boolean go(Job stateOrNull) {
    if (stateOrNull != null) {
      job.set(stateOrNull);
      showHistory();
    }
    return stateOrNull != null;
  }

  private void showHistory() {
    undoName.set(history.undoName());
    redoName.set(history.redoName());
  }

  Job now() {
    return job.get();
  }

  Job takenUp() {
    return takenUp.get();
  }

  ReadOnlyObjectWrapper<Job> jobProperty() {
    return job;
  }

  ReadOnlyObjectWrapper<Job> takenUpProperty() {
    return takenUp;
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
