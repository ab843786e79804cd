package holdcurve.ui.window.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Jobs that were open lately, the last one first. */
public final class RecentJobs {
  private static final int MOST = 6;

  /**
   * One of them, as it was left.
   *
   * @param title what the owner calls the car
   * @param date of its last hold; may be empty
   * @param state how far it is, in a few words
   */
  public record Recent(Path file, String title, String date, String state) {}

  private final ObservableList<Recent> jobs = FXCollections.observableArrayList();
  private final ObservableList<Recent> shown = FXCollections.unmodifiableObservableList(jobs);

  /** Puts a job first, in the place of what was known of it. */
  void note(Recent recent) {
    List<Recent> now = new ArrayList<>(jobs);
    now.removeIf(other -> other.file().equals(recent.file()));
    now.add(0, recent);
    if (!now.equals(jobs)) {
      restore(now);
    }
  }

  /** As they were kept. */
  public void restore(List<Recent> kept) {
    jobs.setAll(kept.subList(0, Math.min(MOST, kept.size())));
  }

  /** The last one first. */
  public ObservableList<Recent> all() {
    return shown;
  }
}
