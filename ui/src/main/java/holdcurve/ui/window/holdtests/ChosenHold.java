package holdcurve.ui.window.holdtests;

import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.TestEdits;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Which hold test of the open job is looked at, and how it is changed. */
final class ChosenHold {
  private final OpenJobModel jobs;
  private final Stopwatch watch;
  private final ObservableList<String> testIds = FXCollections.observableArrayList();
  private final ObservableList<String> shownIds = FXCollections.unmodifiableObservableList(testIds);
  private final StringProperty chosen;
  private final ObjectProperty<HoldTest> test = new SimpleObjectProperty<>();
  private final StringProperty hint = new SimpleStringProperty("");

  /**
   * @param watch stopped when another hold is turned to by what becomes of the job
   */
  ChosenHold(OpenJobModel jobs, Stopwatch watch) {
    this.jobs = jobs;
    this.watch = watch;
    this.chosen = jobs.holdProperty();
    jobs.takenUpProperty().addListener((property, before, now) -> watch.stop());
    jobs.jobProperty().addListener((property, before, now) -> update());
    chosen.addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    Job job = jobs.jobProperty().get();
    List<String> ids = job == null ? List.of() : job.tests().stream().map(HoldTest::id).toList();
    if (!testIds.equals(ids)) {
      testIds.setAll(ids);
    }
    if (!ids.contains(chosen.get())) {
      watch.stop();
      chosen.set(ids.isEmpty() ? "" : ids.get(0));
    }
    test.set(ids.isEmpty() ? null : JobEdits.test(job, chosen.get()));
  }

  /** Changes the hold; can be taken back. */
  void change(String what, UnaryOperator<HoldTest> change) {
    jobs.change(what, job -> JobEdits.change(job, chosen.get(), change));
  }

  /** Changes its log; can be taken back. */
  void changeLog(String what, UnaryOperator<GaugeLog> change) {
    change(what, hold -> TestEdits.withLog(hold, change.apply(hold.log())));
  }

  /** Adds a hold without clamps and turns to it. */
  void addTest(String wanted) {
    watch.stop();
    jobs.beginHold(wanted, Set.of());
  }

  /** Takes the chosen hold out of the job. */
  void removeTest() {
    String id = chosen.get();
    if (isFree(id)) {
      jobs.change("removing " + id, job -> JobEdits.removeTest(job, id));
    }
  }

  /** Gives the chosen hold another name; an empty one or one that is taken changes nothing. */
  void rename(String wanted) {
    String id = wanted.strip();
    String before = chosen.get();
    if (!id.isEmpty() && !testIds.contains(id) && isFree(before)) {
      Job renamed = JobEdits.change(job(), before, hold -> TestEdits.named(hold, id));
      jobs.change("name of the hold", job -> renamed);
      chosen.set(id);
    }
  }

  private boolean isFree(String id) {
    boolean free = !JobEdits.isNamed(job(), id);
    if (!free) {
      hint.set("A finding or a repair names the hold " + id + ": remove that first.");
    }
    return free;
  }

  /** A new hold, clamped like this one, and turned to. */
  void again() {
    watch.stop();
    jobs.beginHold(chosen.get(), test.get().clamped());
  }

  /** Whether there is a hold, and it has readings. */
  boolean hasReadings() {
    return test.get() != null && !test.get().log().readings().isEmpty();
  }

  /** Ids of all holds of the job. */
  ObservableList<String> testIds() {
    return shownIds;
  }

  /** Id of the hold; empty for none. */
  StringProperty idProperty() {
    return chosen;
  }

  /** The hold; null for none. */
  ObjectProperty<HoldTest> testProperty() {
    return test;
  }

  /** What to do next, or what was wrong; may be empty. */
  StringProperty hintProperty() {
    return hint;
  }

  PressureFormat pressures() {
    return jobs.pressures();
  }

  OpenJobModel jobs() {
    return jobs;
  }

  /** The open job; null for none. */
  Job job() {
    return jobs.jobProperty().get();
  }
}
