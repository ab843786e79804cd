package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchAssessment;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.FlowPoint;
import holdcurve.bench.flowsheet.MatchedSets;
import holdcurve.bench.flowsheet.SetHistory;
import holdcurve.bench.flowsheet.SheetFindings;
import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.BenchSheetReader;
import holdcurve.file.BenchSheetWriter;
import holdcurve.file.SafeFile;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.Job;
import holdcurve.ui.report.BenchSheetPaper;
import holdcurve.ui.report.ReportPdf;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.QuestionModel;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The sheet that is being filled in, and what it says. Every change is judged at once: a sheet
 * takes a millisecond.
 */
public final class BenchSheetModel {
  private static final String NAME = "Bench sheet";
  private static final String TYPED_ONLY = "The bench sheet that was typed is kept nowhere else.";
  private static final int ROWS = 6;

  private final OpenJobModel jobs;
  private final Supplier<LocalDate> today;
  private final BenchLimits limits = BenchLimits.shipped();
  private final ObservableList<SheetRow> rows = FXCollections.observableArrayList();

  /** Kept, because a list only knows its unmodifiable view weakly, and with it the listeners. */
  private final ObservableList<SheetRow> shownRows = FXCollections.unmodifiableObservableList(rows);

  private final StringProperty pressure = new SimpleStringProperty();
  private final StringProperty fluid = new SimpleStringProperty();
  private final StringProperty celsius = new SimpleStringProperty();
  private final StringProperty dropMinutes = new SimpleStringProperty();
  private final StringProperty pulse = new SimpleStringProperty();
  private final StringProperty serviced = new SimpleStringProperty("");
  private final ReadOnlyObjectWrapper<BenchReport> report = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

  private final BooleanProperty inReport = new SimpleBooleanProperty();
  private final ObservableList<BenchSheet> earlier = FXCollections.observableArrayList();

  /** Settings of the sheet that was read which have no field. */
  private String kept = "";

  /** The sheet as it was read, until something in the table is changed. */
  private BenchSheet read;

  private boolean filling;

  /**
   * @param today the day to count shelf time to
   */
  public BenchSheetModel(OpenJobModel jobs, Supplier<LocalDate> today) {
    this.jobs = jobs;
    this.today = today;
    for (StringProperty field : List.of(pressure, fluid, celsius, dropMinutes, pulse, serviced)) {
      field.addListener((property, before, now) -> typed());
    }
    jobs.jobProperty().addListener((property, before, now) -> judge());
    jobs.pressures().unitProperty().addListener((property, before, now) -> convert(before, now));
    jobs.takenUpProperty().addListener((property, before, now) -> inReport.set(false));
    jobs.reportedSheetProperty()
        .bind(
            Bindings.createObjectBinding(
                () -> inReport.get() ? report.get() : null, inReport, report));
    fillEmpty();
    jobs.askBeforeClosing(() -> isTypedOnly() ? Optional.of(TYPED_ONLY) : Optional.empty());
  }

  private boolean isTypedOnly() {
    return read == null && !rows.stream().allMatch(SheetRow::isEmpty);
  }

  /** Begins an empty sheet; asks first if one was typed. */
  public void clear() {
    replace(this::fillEmpty);
  }

  /** What was typed stands nowhere else. */
  private void replace(Runnable next) {
    if (!isTypedOnly()) {
      next.run();
    } else {
      jobs.questions().ask(TYPED_ONLY, new QuestionModel.Answer("Replace it", next, false));
    }
  }

  private void fillEmpty() {
    List<SheetRow> fresh = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      fresh.add(new SheetRow(Integer.toString(i)));
    }
    fill(SheetForm.usual(), fresh, null);
  }

  /** Adds an empty line. */
  public void addRow() {
    SheetRow row = new SheetRow(Integer.toString(rows.size() + 1));
    watch(row);
    rows.add(row);
  }

  /** Reads a file in the background and shows it. */
  public void open(Path file) {
    jobs.work()
        .start(
            "Reading the bench sheet", progress -> BenchSheetReader.read(file, limits), this::show);
  }

  /** Shows a table that was copied elsewhere, or says in the banner why it can't be read. */
  public void paste(String text) {
    try {
      show(BenchSheetReader.read("pasted text", text, limits, form().settings()));
    } catch (InputException e) {
      jobs.report(e.getMessage());
    }
  }

  private void show(BenchSheet sheet) {
    replace(() -> fill(sheet));
  }

  private void fill(BenchSheet sheet) {
    List<SheetRow> fresh =
        sheet.injectors().stream().map(injector -> SheetForm.row(injector, sheet, limits)).toList();
    fill(SheetForm.of(sheet), fresh, sheet);
  }

  private void fill(SheetForm form, List<SheetRow> fresh, BenchSheet sheet) {
    filling = true;
    pressure.set(inUnit(form.pressure(), PressureUnit.BAR, jobs.pressures().unit()));
    fluid.set(form.fluid());
    celsius.set(form.celsius());
    dropMinutes.set(form.dropMinutes());
    pulse.set(form.pulse());
    serviced.set(sheet == null ? "" : sheet.serviced().map(LocalDate::toString).orElse(""));
    fresh.forEach(this::watch);
    rows.setAll(fresh);
    filling = false;
    read = sheet;
    kept = sheet == null ? "" : SheetForm.kept(sheet, limits);
    judge();
  }

  private void convert(PressureUnit before, PressureUnit now) {
    filling = true;
    pressure.set(inUnit(pressure.get(), before, now));
    filling = false;
  }

  /** What is no number stays as it was typed: the reader then says so. */
  private static String inUnit(String typed, PressureUnit was, PressureUnit now) {
    OptionalDouble pascals = PressureFormat.parse(typed, was);
    return pascals.isPresent() ? SheetForm.figure(now.fromPascal(pascals.getAsDouble())) : typed;
  }

  private void watch(SheetRow row) {
    row.id().addListener((property, before, now) -> typed());
    for (SheetColumn column : SheetColumn.values()) {
      row.cell(column).addListener((property, before, now) -> typed());
    }
  }

  /** What was read holds more than the table shows, so it counts until the table is changed. */
  private void typed() {
    if (!filling) {
      read = null;
      judge();
    }
  }

  private void judge() {
    trouble.set("");
    if (rows.stream().allMatch(SheetRow::isEmpty)) {
      report.set(null);
      return;
    }
    try {
      BenchSheet sheet = read == null ? BenchSheetReader.read(NAME, text(), limits) : read;
      report.set(BenchAssessment.judge(sheet, point(sheet), limits, today.get()));
    } catch (InputException e) {
      trouble.set(PlainRefusal.of(e.getMessage(), NAME, text()));
    }
  }

  private String text() {
    return form().text(rows, serviced.get(), kept);
  }

  private SheetForm form() {
    return new SheetForm(
        inUnit(pressure.get(), jobs.pressures().unit(), PressureUnit.BAR),
        fluid.get(),
        celsius.get(),
        dropMinutes.get(),
        pulse.get());
  }

  /** At the open job's set pressure and with its fuel; without a job, at the bench's. */
  private FlowPoint point(BenchSheet sheet) {
    Job job = jobs.jobProperty().get();
    if (job == null) {
      return sheet.bench(sheet.latest()).point();
    }
    return FlowPoint.of(job.circuit(), sheet);
  }

  /** The drops on the sheet as findings for the open job; empty where they don't fit it. */
  List<Finding> drops() {
    Job job = jobs.jobProperty().get();
    BenchReport now = report.get();
    return job == null || now == null ? List.of() : SheetFindings.drops(now, job.circuit());
  }

  /** Puts the drops into the findings of the open job; can be taken back. */
  public void takeDrops() {
    List<Finding> drops = drops();
    if (drops.isEmpty()) {
      jobs.report(
          "No drops to put into the job: count them at each injector, one line for each that the"
              + " circuit has.");
      return;
    }
    jobs.change(
        "drops from the bench sheet",
        job -> {
          List<Finding> findings = new ArrayList<>(job.findings());
          findings.removeIf(drops::contains);
          findings.addAll(drops);
          return job.withFindings(findings);
        });
  }

  /** Writes the sheet as a table, before and after side by side. */
  public void save(Path file) {
    if (judged().isPresent()) {
      BenchSheet sheet = report.get().sheet();
      jobs.work()
          .start(
              "Writing the bench sheet",
              progress -> {
                SafeFile.write(file, BenchSheetWriter.csv(sheet, limits));
                return sheet;
              },
              this::written);
    }
  }

  /** What was typed now stands in a file. */
  private void written(BenchSheet sheet) {
    if (report.get() != null && report.get().sheet().equals(sheet)) {
      read = sheet;
    }
  }

  /**
   * Draws the sheet for the customer, as PDF.
   *
   * @param then shows it
   */
  public void draw(Path file, Consumer<Path> then) {
    judged()
        .ifPresent(
            now -> {
              PressureUnit unit = jobs.pressures().unit();
              LocalDate day = today.get();
              jobs.work()
                  .start(
                      "Drawing the bench sheet",
                      progress -> {
                        String page = BenchSheetPaper.html(now, limits, day, unit);
                        SafeFile.write(file, ReportPdf.of(page));
                        return file;
                      },
                      then);
            });
  }

  /** The report where the sheet can be read as it stands; else says so in the banner. */
  private Optional<BenchReport> judged() {
    if (report.get() == null || !trouble.get().isEmpty()) {
      jobs.report("Fill the bench sheet in first: as it stands it can't be read.");
      return Optional.empty();
    }
    return Optional.of(report.get());
  }

  /** Whether the sheet goes into the report of the job. */
  BooleanProperty inReportProperty() {
    return inReport;
  }

  /** Reads an earlier sheet of the same set. */
  public void addEarlier(Path file) {
    jobs.work()
        .start(
            "Reading an earlier sheet",
            progress -> BenchSheetReader.read(file, limits),
            earlier::add);
  }

  /** Earlier sheets of the same set, in the order read. */
  ObservableList<BenchSheet> earlier() {
    return earlier;
  }

  /** The set over the years; empty with one sheet, or where no injector is on two. */
  Optional<SetHistory> history() {
    if (earlier.isEmpty() || report.get() == null) {
      return Optional.empty();
    }
    List<BenchReport> all = new ArrayList<>();
    for (BenchSheet sheet : earlier) {
      all.add(BenchAssessment.judge(sheet, report.get().point(), limits, today.get()));
    }
    all.add(report.get());
    return Optional.of(SetHistory.of(all)).filter(history -> !history.lines().isEmpty());
  }

  /** How many of the injectors are fit to be matched; none without a sheet. */
  int fitToMatch() {
    BenchReport now = report.get();
    return now == null
        ? 0
        : (int)
            now.injectors().stream()
                .filter(i -> i.troubles().isEmpty() && i.now().staticFlow().isPresent())
                .count();
  }

  /**
   * Sorted into sets for engines.
   *
   * @param size injectors to a set
   * @return empty where there aren't enough that are fit
   */
  Optional<MatchedSets> matched(int size) {
    return size >= 2 && size <= fitToMatch()
        ? Optional.of(MatchedSets.of(report.get(), size, limits))
        : Optional.empty();
  }

  ObservableList<SheetRow> rows() {
    return shownRows;
  }

  /** Pressure of the bench as typed, in the unit shown. */
  StringProperty pressureProperty() {
    return pressure;
  }

  /** Id of the fluid. */
  StringProperty fluidProperty() {
    return fluid;
  }

  /** As typed [°C]. */
  StringProperty celsiusProperty() {
    return celsius;
  }

  /** As typed [min]. */
  StringProperty dropMinutesProperty() {
    return dropMinutes;
  }

  /** As typed [ms]. */
  StringProperty pulseProperty() {
    return pulse;
  }

  /** As typed, such as 2026-11-10; empty for not known. */
  StringProperty servicedProperty() {
    return serviced;
  }

  /** What the sheet says; null while it is empty. Stays while something typed can't be read. */
  ReadOnlyObjectProperty<BenchReport> reportProperty() {
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
