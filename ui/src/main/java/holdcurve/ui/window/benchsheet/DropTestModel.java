package holdcurve.ui.window.benchsheet;

import holdcurve.bench.droptest.DropAssessment;
import holdcurve.bench.droptest.DropFinding;
import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.TrappedFuel;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.DropFormSettings;
import holdcurve.file.DropTestReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.QuestionModel;
import holdcurve.ui.window.job.WorkModel;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A drop-per-pulse test that is being typed, and what it says so far. */
public final class DropTestModel {
  private static final String NAME = "Drop test";
  private static final long SEED = 1;
  private static final int ROUNDS = 2;
  private static final int USUAL_INJECTORS = 6;

  private final OpenJobModel jobs;
  private final Supplier<LocalDate> today;
  private final BenchLimits limits = BenchLimits.shipped();
  private final DropForm form = new DropForm();
  private final ObservableList<DropRow> rows = FXCollections.observableArrayList();
  private final ObservableList<DropRow> shownRows = FXCollections.unmodifiableObservableList(rows);
  private final ReadOnlyObjectWrapper<DropReport> report = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

  private WorkModel.Item judging;
  private boolean filling;

  /** Whether something in it was typed since it was read or begun. */
  private boolean typed;

  /**
   * @param today the day that a result goes into the job with
   */
  public DropTestModel(OpenJobModel jobs, Supplier<LocalDate> today) {
    this.jobs = jobs;
    this.today = today;
    form.others().forEach(this::watch);
    form.pressures().forEach(this::watch);
    jobs.takenUpProperty().addListener((property, before, now) -> otherJob());
    jobs.pressures().unitProperty().addListener((property, before, now) -> convert(before, now));
    fillEmpty();
  }

  private void watch(StringProperty field) {
    field.addListener((property, before, now) -> typed());
  }

  /** A test that nothing was typed into gets as many injectors as the job has. */
  private void otherJob() {
    if (rows.stream().allMatch(DropRow::isEmpty)) {
      fillEmpty();
    } else {
      judge();
    }
  }

  /** Begins an empty test; asks first if one was typed. */
  public void clear() {
    replace(this::fillEmpty);
  }

  /** What was typed stands nowhere else. */
  private void replace(Runnable next) {
    if (!typed || rows.stream().allMatch(DropRow::isEmpty)) {
      next.run();
    } else {
      jobs.questions()
          .ask(
              "The test that was typed here is kept nowhere else.",
              new QuestionModel.Answer("Replace it", next, false));
    }
  }

  /** Two rounds, and a watch without firing. */
  private void fillEmpty() {
    List<DropRow> fresh = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      usualInjectors().forEach(id -> fresh.add(new DropRow(id)));
    }
    fresh.add(new DropRow(DropRow.IDLE));
    fill(fresh, () -> form.usual(jobs.pressures()));
  }

  private List<String> usualInjectors() {
    int count =
        circuit() == null
            ? 0
            : circuit().partsOf(Injector.KIND).stream()
                .mapToInt(part -> (int) Math.round(part.value(Injector.COUNT)))
                .sum();
    List<String> ids = new ArrayList<>();
    for (int i = 1; i <= (count < 2 ? USUAL_INJECTORS : count); i++) {
      ids.add(Integer.toString(i));
    }
    return ids;
  }

  private Circuit circuit() {
    Job job = jobs.jobProperty().get();
    return job == null ? null : job.circuit();
  }

  /** Adds a line for each injector that there is, before the watch without firing. */
  public void addRound() {
    List<String> ids =
        rows.stream()
            .map(row -> row.injector().get().strip())
            .filter(id -> !id.isEmpty() && !id.equalsIgnoreCase(DropRow.IDLE))
            .distinct()
            .toList();
    int place = rows.size();
    while (place > 0 && rows.get(place - 1).injector().get().equalsIgnoreCase(DropRow.IDLE)) {
      place--;
    }
    List<DropRow> round = ids.stream().map(DropRow::new).toList();
    round.forEach(this::watch);
    rows.addAll(place, round);
  }

  private void watch(DropRow row) {
    row.cells().forEach(this::watch);
  }

  /** Reads a file in the background and shows it. */
  public void open(Path file) {
    jobs.work().start("Reading the drop test", progress -> DropTestReader.read(file), this::show);
  }

  /** Shows a table that was copied elsewhere, or says in the banner why it can't be read. */
  public void paste(String text) {
    try {
      show(
          DropTestReader.read(
              "pasted text",
              text,
              new DropFormSettings(form.settings(jobs.pressures()), jobs.pressures().unit())));
    } catch (InputException e) {
      jobs.report(e.getMessage());
    }
  }

  private void show(DropTest test) {
    replace(
        () -> fill(DropForm.rows(test, jobs.pressures()), () -> form.fill(test, jobs.pressures())));
  }

  private void fill(List<DropRow> fresh, Runnable settings) {
    filling = true;
    settings.run();
    fresh.forEach(this::watch);
    rows.setAll(fresh);
    filling = false;
    typed = false;
    judge();
  }

  /** What was typed in one unit is shown in another. */
  private void convert(PressureUnit before, PressureUnit now) {
    filling = true;
    for (StringProperty field : pressureFields()) {
      OptionalDouble pascals = PressureFormat.parse(field.get(), before);
      pascals.ifPresent(value -> field.set(jobs.pressures().number(value)));
    }
    filling = false;
  }

  private List<StringProperty> pressureFields() {
    List<StringProperty> fields = new ArrayList<>(form.pressures());
    rows.forEach(row -> fields.addAll(List.of(row.before(), row.after(), row.later())));
    return fields;
  }

  private void typed() {
    if (!filling) {
      typed = true;
      judge();
    }
  }

  private void judge() {
    if (judging != null) {
      judging.cancel();
    }
    trouble.set("");
    if (rows.stream().filter(row -> !row.isEmpty()).count() < 2) {
      report.set(null);
      return;
    }
    String text = form.text(rows, jobs.pressures());
    try {
      DropTest test = DropTestReader.read(NAME, text);
      Circuit circuit = circuit();
      judging =
          jobs.work().start("Judging the drops", progress -> judged(test, circuit), report::set);
    } catch (InputException e) {
      trouble.set(PlainRefusal.of(e.getMessage(), NAME, text));
    }
  }

  /** Puts the result into the findings of the open job; can be taken back. */
  public void takeResult() {
    DropReport now = report.get();
    Circuit circuit = circuit();
    Optional<DropTestResult> result =
        now == null || circuit == null || !trouble.get().isEmpty()
            ? Optional.empty()
            : DropFinding.of(now, circuit, Optional.of(today.get()));
    if (result.isEmpty()) {
      jobs.report("No drop test to put into the job: fill it in, and open a job with injectors.");
      return;
    }
    jobs.change(
        "result of the drop test",
        job -> {
          List<Finding> findings = new ArrayList<>(job.findings());
          findings.removeIf(
              f -> f instanceof DropTestResult old && old.date().equals(result.get().date()));
          findings.add(result.get());
          return job.withFindings(findings);
        });
  }

  private DropReport judged(DropTest test, Circuit circuitOrNull) {
    TrappedFuel known = TrappedFuel.in(Optional.ofNullable(circuitOrNull), test);
    return DropAssessment.judge(test, known, limits, SEED);
  }

  /** How the test was done. */
  DropForm form() {
    return form;
  }

  ObservableList<DropRow> rows() {
    return shownRows;
  }

  /** What the test says; null while too little was typed. Stays while it can't be read. */
  ReadOnlyObjectProperty<DropReport> reportProperty() {
    return report.getReadOnlyProperty();
  }

  /** What typed can't be read, as a sentence; empty for nothing. */
  ReadOnlyStringProperty troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  BenchLimits limits() {
    return limits;
  }

  PressureFormat pressures() {
    return jobs.pressures();
  }
}
