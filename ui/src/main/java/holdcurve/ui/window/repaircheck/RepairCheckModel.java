package holdcurve.ui.window.repaircheck;

import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairChecker;
import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.Ranking;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.RankableTests;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Timeline;
import holdcurve.record.job.Upkeep;
import holdcurve.record.refit.RefitStep;
import holdcurve.record.refit.RefitTick;
import holdcurve.ui.report.JobReport;
import holdcurve.ui.report.ReportFiles;
import holdcurve.ui.window.job.ComputedResult;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.SeveralHolds;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;

/** The check of the open job's last holds, its refit list, and its report. */
public final class RepairCheckModel {
  /** Same job, same answer. */
  private static final long SEED = 1;

  private final OpenJobModel jobs;
  private final Supplier<RepairChecker> checker;
  private final Supplier<LocalDate> today;
  private final ComputedResult<RepairCheck> check;
  private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Path> written = new ReadOnlyObjectWrapper<>();
  private final BiFunction<Circuit, String, Set<String>> parts;
  private final ReadOnlyStringWrapper named = new ReadOnlyStringWrapper("");
  private final StringProperty initials = new SimpleStringProperty("");

  /**
   * @param checker asked on a background thread, once a check
   * @param today the date that ticks and repairs get
   * @param parts of a suspect, by its id; asked on a background thread
   */
  public RepairCheckModel(
      OpenJobModel jobs,
      Supplier<RepairChecker> checker,
      Supplier<LocalDate> today,
      BiFunction<Circuit, String, Set<String>> parts) {
    this.jobs = jobs;
    this.checker = checker;
    this.today = today;
    this.check = jobs.check();
    this.parts = parts;
    jobs.takenUpProperty().addListener((property, before, now) -> forget());
    jobs.ranking().resultProperty().addListener((property, before, now) -> lookUp(now));
    lookUp(jobs.ranking().resultProperty().get());
  }

  /** The part to put right is that of the likeliest suspect, if it has one. */
  private void lookUp(Ranking ranking) {
    named.set("");
    Job job = jobs.ranking().rankedProperty().get();
    if (ranking == null || job == null) {
      return;
    }
    ranking.suspects().stream()
        .filter(suspect -> !suspect.isNone())
        .findFirst()
        .ifPresent(
            suspect ->
                jobs.work()
                    .start(
                        "Looking up the part",
                        progress -> parts.apply(job.circuit(), suspect.id()),
                        found -> found.stream().findFirst().ifPresent(named::set)));
  }

  private void forget() {
    said.set("");
    written.set(null);
  }

  /** Checks the last holds in the background. */
  public void check() {
    start(check -> {});
  }

  private void start(Consumer<RepairCheck> then) {
    Job job = jobs.jobProperty().get();
    if (job == null) {
      return;
    }
    Job readable = RankableTests.of(job);
    if (readable.tests().isEmpty()) {
      jobs.report("A check needs a hold with at least three readings after the pump stopped.");
      return;
    }
    if (unproved().isPresent()) {
      jobs.report(Timeline.holdAgain(unproved().get()));
      return;
    }
    jobs.work()
        .start(
            "Checking the repair",
            progress -> checker.get().check(readable, Optional.empty(), SEED, progress),
            result -> {
              check.found(result, job);
              then.accept(result);
            });
  }

  /** Writes the report beside the job's file, and checks before where that wasn't done. */
  public void report() {
    Path file = jobs.fileProperty().get();
    if (file == null) {
      jobs.report("Save the job first: the report is written beside it.");
    } else if (check.valueProperty().get() == null || check.outdatedProperty().get()) {
      start(result -> write(file, result));
    } else {
      write(file, check.valueProperty().get());
    }
  }

  private void write(Path file, RepairCheck result) {
    JobReport report =
        new JobReport(
            jobs.jobProperty().get(),
            result,
            today.get(),
            Optional.ofNullable(jobs.reportedSheetProperty().get()),
            jobs.pressures().unit());
    jobs.work()
        .start(
            "Writing the report",
            progress -> {
              ReportFiles files = ReportFiles.beside(file, Optional.empty());
              files.write(report);
              return files;
            },
            files -> {
              written.set(files.html());
              said.set("Report: " + files.html() + ", and to print: " + files.pdf());
            });
  }

  /**
   * Ticks a step with today's date, or takes its tick off.
   *
   * @return whether it could be done: a tick needs initials
   */
  public boolean tick(String step, boolean done) {
    String by = initials.get().strip();
    if (done && !RefitTick.isName(by)) {
      return false;
    }
    jobs.change(
        done ? "tick" : "tick taken off",
        job -> {
          Upkeep upkeep = job.upkeep();
          return job.withUpkeep(
              upkeep.withRefit(
                  done
                      ? upkeep.refit().tick(step, new RefitTick(today.get(), by))
                      : upkeep.refit().untick(step)));
        });
    return true;
  }

  /**
   * Notes that a part was put right after the last hold test; can be taken back.
   *
   * @param part id of the part
   * @param note what was done; may be empty
   * @return whether it was noted: before the first hold there is nothing to set it apart from
   */
  public boolean noteRepair(String part, String note) {
    Optional<HoldTest> last = RankableTests.last(jobs.jobProperty().get());
    if (last.isEmpty()) {
      jobs.report(
          "Take a hold first: a repair is noted between the hold before it and the one after.");
      return false;
    }
    Repair repair = new Repair(today.get(), part, "", last.get().id(), note.strip());
    jobs.change("repair", job -> job.withUpkeep(job.upkeep().withRepair(repair)));
    return true;
  }

  /**
   * The last hold before the last repair and the last one after it with the same clamps, over one
   * another; empty where there aren't both.
   */
  Optional<SeveralHolds> beforeAndAfter() {
    Job job = jobs.jobProperty().get();
    Job readable = job == null ? null : RankableTests.of(job);
    if (readable == null || readable.upkeep().repairs().isEmpty()) {
      return Optional.empty();
    }
    List<Repair> repairs = readable.upkeep().repairs();
    List<HoldTest> tests = readable.tests();
    List<String> ids = tests.stream().map(HoldTest::id).toList();
    int last = ids.indexOf(repairs.get(repairs.size() - 1).afterTest());
    for (int after = tests.size() - 1; after > last; after--) {
      for (int before = last; before >= 0; before--) {
        if (tests.get(before).clamped().equals(tests.get(after).clamped())) {
          return Optional.of(pair(tests.get(before), tests.get(after)));
        }
      }
    }
    return Optional.empty();
  }

  private SeveralHolds pair(HoldTest before, HoldTest after) {
    double span = Math.max(before.log().holdSpan(), after.log().holdSpan());
    HoldPlot.Wish wish =
        new HoldPlot.Wish(Optional.empty(), List.of(), span, false, jobs.pressures().unit());
    return SeveralHolds.of(
        List.of("before: " + before.id(), "after: " + after.id()),
        List.of(HoldPlot.of(before, wish), HoldPlot.of(after, wish)));
  }

  /** Takes a noted repair out; can be taken back. */
  public void removeRepair(Repair repair) {
    jobs.change("removing a repair", job -> job.withUpkeep(job.upkeep().withoutRepair(repair)));
  }

  /** The last repair, if no hold followed it yet. */
  public Optional<Repair> unproved() {
    return jobs.unproved();
  }

  /** Adds a hold without clamps, named after the repair. */
  public void holdAgain() {
    jobs.beginHold("after the repair", Set.of());
  }

  /** Each checked hold without clamps beside the pass limit, in a sentence. */
  public List<String> passSentences() {
    RepairCheck now = check.valueProperty().get();
    return now == null ? List.of() : now.marks().stream().map(mark -> words(now, mark)).toList();
  }

  private String words(RepairCheck now, PassMark mark) {
    String limit =
        "Pass limit "
            + jobs.pressures().text(now.limit().pressure())
            + " after "
            + Math.round(now.limit().time() / 60)
            + " min: ";
    String shown = jobs.pressures().text(mark.reading());
    return switch (mark.outcome()) {
      case PASSES -> limit + "passes with " + shown + ".";
      case WITHIN_GAUGE_ERROR -> limit + shown + ", less below it than the gauge may be off.";
      case FAILS -> limit + "does not pass with " + shown + ".";
      case TOO_SHORT -> limit + "the hold ended before.";
    };
  }

  /** Steps of the open job's refit list; empty while none is open. */
  public List<RefitStep> steps() {
    Job job = jobs.jobProperty().get();
    return job == null ? List.of() : job.upkeep().refit().steps();
  }

  /** The open job; null while none is open. */
  public ReadOnlyObjectProperty<Job> jobProperty() {
    return jobs.jobProperty();
  }

  /** The check; null until it was asked for. */
  public ReadOnlyObjectProperty<RepairCheck> checkProperty() {
    return check.valueProperty();
  }

  /** Whether the open job has changed since it was checked. */
  public ReadOnlyBooleanProperty outdatedProperty() {
    return check.outdatedProperty();
  }

  /** The report written last; null for none. */
  public ReadOnlyObjectProperty<Path> writtenProperty() {
    return written.getReadOnlyProperty();
  }

  /** What was done last, in a sentence; empty for nothing. */
  public ReadOnlyStringProperty saidProperty() {
    return said.getReadOnlyProperty();
  }

  /** Id of the part that the answer names; empty for none. */
  ReadOnlyStringProperty namedPartProperty() {
    return named.getReadOnlyProperty();
  }

  /** Who ticks. */
  public StringProperty initialsProperty() {
    return initials;
  }

  /** The unit in which pressures are shown. */
  public ObservableValue<PressureUnit> unit() {
    return jobs.pressures().unitProperty();
  }
}
