package holdcurve.ui.window.job;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Work that an earlier window left unsaved, and what to do with it. */
public final class RescueModel {
  private final OpenJobModel jobs;
  private final ObservableList<Autosave.Kept> found = FXCollections.observableArrayList();
  private final ObservableList<Autosave.Kept> shown =
      FXCollections.unmodifiableObservableList(found);

  /**
   * @param found work that was found at the start
   */
  public RescueModel(OpenJobModel jobs, List<Autosave.Kept> found) {
    this.jobs = jobs;
    this.found.setAll(found);
  }

  /** What waits for a decision, latest first. */
  public ObservableList<Autosave.Kept> found() {
    return shown;
  }

  /** Opens it, unsaved as it was; it is offered until then. */
  public void bringBack(Autosave.Kept kept) {
    jobs.leave(
        () -> {
          jobs.beginNow(kept.job(), kept.file().orElse(null));
          forget(kept);
        });
  }

  /** Deletes it. */
  public void throwAway(Autosave.Kept kept) {
    forget(kept);
  }

  private void forget(Autosave.Kept kept) {
    found.remove(kept);
    kept.delete();
  }
}
