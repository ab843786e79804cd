package holdcurve.ui.window.job;

import holdcurve.record.job.Job;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;

/**
 * Something worked out about the open job, and whether the job has changed since. It stays when it
 * is out of date, so that it can be read beside what changed; pages dim it and say so.
 */
public final class ComputedResult<T> {
  private final ObservableValue<Job> job;
  private final ReadOnlyObjectWrapper<T> value = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();
  private Basis basis;

  /**
   * @param job the open one
   */
  public ComputedResult(ObservableValue<Job> job) {
    this.job = job;
    job.addListener((property, before, now) -> compare());
  }

  /**
   * This is what was found.
   *
   * @param found null for nothing
   * @param about the job as it was when it was asked about
   */
  public void found(T found, Job about) {
    basis = about == null ? null : Basis.of(about);
    value.set(found);
    compare();
  }

  /** Nothing is known. */
  public void forget() {
    found(null, null);
  }

  private void compare() {
    Job now = job.getValue();
    outdated.set(value.get() != null && (now == null || !Basis.of(now).equals(basis)));
  }

  /** What was found; null for nothing yet. */
  public ReadOnlyObjectProperty<T> valueProperty() {
    return value.getReadOnlyProperty();
  }

  /** Whether something was found, and the job is another now than it was then. */
  public ReadOnlyBooleanProperty outdatedProperty() {
    return outdated.getReadOnlyProperty();
  }
}
