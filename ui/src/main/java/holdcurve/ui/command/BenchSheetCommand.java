package holdcurve.ui.command;

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
import holdcurve.common.number.Celsius;
import holdcurve.file.BenchReportTable;
import holdcurve.file.BenchReportWriter;
import holdcurve.file.BenchSheetReader;
import holdcurve.file.BenchSheetWriter;
import holdcurve.file.CircuitReader;
import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.file.ResultFile;
import holdcurve.file.SafeFile;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.fluid.Fluids;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.Job;
import holdcurve.ui.report.BenchSheetPaper;
import holdcurve.ui.report.ReportPdf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a flow-bench sheet. */
@Command(
    name = "bench-sheet",
    description = {
      "Judges a flow-bench sheet of a set of injectors.",
      "Flows are carried over to the circuit's pressure and fuel. It says how far each is out of"
          + " line, and what the service brought.",
      "  holdcurve bench-sheet six.csv --circuit my-car.circuit.json"
    },
    mixinStandardHelpOptions = true)
final class BenchSheetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "A bench sheet (*.csv or *.bench.json).")
  private Path file;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "Show flows at this circuit's set pressure and with its fuel.")
  private Path circuit;

  @Option(
      names = "--job",
      paramLabel = "JOB",
      description = "Take the circuit of this job, and put the drops counted into its findings.")
  private Path jobFile;

  @Option(
      names = "--pressure",
      paramLabel = "P",
      converter = StatedPressure.Typed.class,
      description = "Show flows at this pressure (default: the circuit's, else the bench's).")
  private StatedPressure asked;

  @Option(
      names = "--fuel",
      paramLabel = "FUEL",
      description = "Show flows with this fuel (default: the circuit's, else petrol).")
  private String fuel;

  @Option(
      names = "--fuel-temp",
      paramLabel = "C",
      defaultValue = "20",
      description = "Temperature of the fuel in °C (default: ${DEFAULT-VALUE}).")
  private double celsius;

  @Option(
      names = "--sets-of",
      paramLabel = "N",
      description = "Sort them into matched sets of so many.")
  private Integer setsOf;

  @Option(
      names = "--earlier",
      paramLabel = "FILE",
      description = "An earlier sheet of the same set; give it once for each. Shows the trend.")
  private List<Path> earlier = List.of();

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Also draw the sheet for the customer, one page, as PDF.")
  private Path pdf;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Also write the sheet as a table, before and after side by side.")
  private Path sheetOut;

  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "The day to count shelf time to, as 2026-11-24 (default: today).")
  private LocalDate today;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Also write the figures of the result as CSV to this file.")
  private Path csv;

  @Mixin private Units units;

  @Mixin private Output output;

  @Override
  public Integer call() {
    BenchLimits limits = BenchLimits.shipped();
    BenchSheet sheet = BenchSheetReader.read(file, limits);
    LocalDate day = today == null ? LocalDate.now() : today;
    Job job = jobFile == null ? null : JobReader.read(jobFile);
    Printout out = new Printout(spec.commandLine().getOut(), unit());
    Circuit known =
        job != null ? job.circuit() : circuit == null ? null : CircuitReader.read(circuit);
    BenchReport report = BenchAssessment.judge(sheet, point(sheet, known), limits, day);
    BenchSheetText.print(report, limits, out);
    if (setsOf != null) {
      out.println();
      BenchSheetText.print(matched(report, limits), out);
    }
    if (!earlier.isEmpty()) {
      List<BenchReport> all = new ArrayList<>();
      for (Path sheetFile : earlier) {
        all.add(
            BenchAssessment.judge(
                BenchSheetReader.read(sheetFile, limits), report.point(), limits, day));
      }
      all.add(report);
      BenchSheetText.print(history(all), out);
    }
    if (known != null) {
      SheetFindings.tired(report, known, limits)
          .ifPresent(
              fault ->
                  Wrapped.print(
                      out, "", "To see what that does: simulate CIRCUIT --fault " + fault));
    }
    if (job != null) {
      feed(job, report, out);
    }
    out.flush();
    if (pdf != null) {
      requirePdf(pdf);
      SafeFile.write(pdf, ReportPdf.of(BenchSheetPaper.html(report, limits, day, unit())));
      Wrapped.print(out, "", "Drawn to " + pdf + ".");
    }
    if (sheetOut != null) {
      requireNew(sheetOut);
      SafeFile.write(sheetOut, BenchSheetWriter.csv(sheet, limits));
    }
    if (csv != null) {
      ResultFile.write(csv, BenchReportTable.csv(report));
    }
    output.write(() -> BenchReportWriter.json(report));
    return 0;
  }

  private void feed(Job job, BenchReport report, Printout out) {
    List<Finding> drops = SheetFindings.drops(report, job.circuit());
    if (drops.isEmpty()) {
      throw InputException.at(
          jobFile.toString(),
          "",
          "its circuit doesn't have the injectors of this sheet, or no drops were counted",
          "give a sheet with a line for each injector of the circuit");
    }
    List<Finding> findings = new ArrayList<>(job.findings());
    findings.removeIf(drops::contains);
    findings.addAll(drops);
    JobWriter.write(jobFile, job.withFindings(findings));
    Wrapped.print(
        out, "", "The drops of " + drops.size() + " injectors now stand in " + jobFile + ".");
  }

  private PressureUnit unit() {
    return jobFile == null ? units.unit() : units.ofJob(jobFile);
  }

  private FlowPoint point(BenchSheet sheet, Circuit known) {
    if (!(celsius >= -10 && celsius <= 60)) {
      throw bad("--fuel-temp " + celsius, "out of range", "give -10 to 60 °C");
    }
    double pressure = sheet.bench(sheet.latest()).point().pressure();
    if (asked != null) {
      double bar = asked.bar(unit());
      if (!(bar >= 0.5 && bar <= 12)) {
        throw bad("--pressure " + asked.typed(), "out of range", "give 0.5 to 12 bar");
      }
      pressure = bar * 1e5;
    } else if (known != null) {
      pressure = FlowPoint.in(known, Celsius.toKelvins(celsius)).orElseThrow().pressure();
    }
    if (fuel == null && known != null) {
      return new FlowPoint(pressure, known.fluid(), Celsius.toKelvins(celsius));
    }
    String id = fuel == null ? "petrol" : fuel;
    return new FlowPoint(
        pressure,
        Fluids.byId(id)
            .orElseThrow(
                () ->
                    bad(
                        "--fuel " + id,
                        "no such fuel",
                        "use one of " + String.join(", ", Fluids.ids()))),
        Celsius.toKelvins(celsius));
  }

  private static void requirePdf(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw bad("--pdf " + file, "the name ends otherwise", "end it in .pdf");
    }
  }

  /** A sheet may be all that is left of an evening at the bench. */
  private static void requireNew(Path file) {
    if (Files.exists(file)) {
      throw bad("--sheet " + file, "there is a file of this name", "choose another name");
    }
  }

  private SetHistory history(List<BenchReport> all) {
    SetHistory history = SetHistory.of(all);
    if (history.lines().isEmpty()) {
      throw bad(
          "--earlier " + earlier.get(0),
          "no injector stands on two of the sheets",
          "give each its mark in a column serial, or the same number");
    }
    return history;
  }

  private MatchedSets matched(BenchReport report, BenchLimits limits) {
    long fit =
        report.injectors().stream()
            .filter(i -> i.troubles().isEmpty() && i.now().staticFlow().isPresent())
            .count();
    if (setsOf < 2 || setsOf > fit) {
      throw bad(
          "--sets-of " + setsOf,
          "only " + fit + " injectors are fit to be matched",
          "give 2 to " + Math.max(2, fit));
    }
    return MatchedSets.of(report, setsOf, limits);
  }

  private static InputException bad(String place, String problem, String remedy) {
    return InputException.at("command line", place, problem, remedy);
  }
}
