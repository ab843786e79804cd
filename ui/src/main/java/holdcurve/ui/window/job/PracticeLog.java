package holdcurve.ui.window.job;

import holdcurve.ui.practice.PracticeResults.Result;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What was scored at this window and kept, newest first; a class may share it. */
public final class PracticeLog {
  private static final int MOST = 2000;

  private final ObservableList<Result> results = FXCollections.observableArrayList();
  private final ObservableList<Result> shown = FXCollections.unmodifiableObservableList(results);

  /** Puts a result on top. */
  public void add(Result result) {
    List<Result> now = new ArrayList<>(List.of(result));
    now.addAll(results);
    restore(now);
  }

  /** Puts another mark on the newest result. */
  public void mark(String mark) {
    if (!results.isEmpty() && !results.get(0).mark().equals(mark)) {
      results.set(0, results.get(0).marked(mark));
    }
  }

  /** Adds results from elsewhere below, but for those that are here already. */
  public void addFrom(List<Result> others) {
    List<Result> now = new ArrayList<>(results);
    others.stream().filter(other -> !now.contains(other)).forEach(now::add);
    restore(now);
  }

  /** As they were kept. */
  public void restore(List<Result> kept) {
    results.setAll(kept.subList(0, Math.min(MOST, kept.size())));
  }

  /** The best score at an exercise; empty before the first. */
  public OptionalInt best(String exercise) {
    return results.stream()
        .filter(result -> result.exercise().equals(exercise))
        .mapToInt(Result::score)
        .max();
  }

  /** Newest first. */
  public ObservableList<Result> all() {
    return shown;
  }
}
