package holdcurve.file;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Service;
import holdcurve.bench.flowsheet.SetFlow;
import holdcurve.common.number.Interval;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.physics.circuit.Unit;
import java.io.IOException;
import java.util.Locale;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes what a bench sheet says as CSV, one figure a line, for a spreadsheet: {@code
 * injector,service,quantity,unit,value,low_5_percent,high_95_percent}. The whole set stands as
 * injector {@code set}. A format line comes first; the dynamic lines are left to the JSON.
 */
public final class BenchReportTable {
  private static final String SET = "set";
  private static final BenchLimits LIMITS = BenchLimits.shipped();

  private final CSVPrinter printer;

  private BenchReportTable(CSVPrinter printer) {
    this.printer = printer;
  }

  /** The report as CSV text of format {@value BenchReport#FORMAT}. */
  public static String csv(BenchReport report) {
    return FigureTable.text(
        BenchReport.FORMAT, printer -> new BenchReportTable(printer).write(report));
  }

  private void write(BenchReport report) throws IOException {
    printer.printRecord(
        "injector", "service", "quantity", "unit", "value", "low_5_percent", "high_95_percent");
    for (Service state : Service.values()) {
      if (report.set(state).isPresent()) {
        set(state, report.set(state).get());
      }
    }
    if (report.gain().isPresent()) {
      range(SET, "", "gain", Unit.PERCENT, report.gain().get());
    }
    if (report.flowLeft().isPresent()) {
      range(SET, "", "flow left of what the maker states", Unit.PERCENT, report.flowLeft().get());
    }
    for (InjectorReport injector : report.injectors()) {
      write(injector);
    }
  }

  private void set(Service state, SetFlow set) throws IOException {
    range(SET, state.word(), "mean static flow", Unit.MILLILITRE_PER_MINUTE, set.mean());
    figure(SET, state.word(), "spread of static flows", Unit.PERCENT, set.spread());
  }

  private void write(InjectorReport injector) throws IOException {
    String id = SpreadsheetText.harmless(injector.id());
    word(id, "to do", injector.fitness().words());
    word(id, "standing", injector.standing().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    for (String trouble : injector.troubles()) {
      word(id, "trouble", SpreadsheetText.harmless(trouble));
    }
    if (injector.gain().isPresent()) {
      range(id, "", "gain", Unit.PERCENT, injector.gain().get());
    }
    for (Service state : Service.values()) {
      if (injector.flow(state).isPresent()) {
        write(id, state.word(), injector.flow(state).get());
      }
    }
  }

  private void write(String id, String state, FlowReport flow) throws IOException {
    if (flow.staticFlow().isPresent()) {
      double rate = flow.staticFlow().getAsDouble();
      figure(id, state, "static flow", Unit.MILLILITRE_PER_MINUTE, rate);
    }
    if (flow.departure().isPresent()) {
      range(id, state, "out of line", Unit.PERCENT, flow.departure().get());
    }
    if (flow.pulseDeparture().isPresent()) {
      range(id, state, "out of line at short pulse", Unit.PERCENT, flow.pulseDeparture().get());
    }
    if (flow.readings().drops().isPresent()) {
      double drops = flow.readings().drops().get().perMinute();
      printer.printRecord(id, state, "drops", "1/min", FigureTable.figure(drops), "", "");
    }
    if (flow.readings().spray().isPresent()) {
      String spray = LIMITS.sprayWord(flow.readings().spray().get());
      printer.printRecord(id, state, "spray", "", spray, "", "");
    }
    if (flow.readings().coil().isPresent()) {
      double coil = flow.readings().coil().getAsDouble();
      printer.printRecord(id, state, "coil", "ohm", FigureTable.figure(coil), "", "");
    }
  }

  private void word(String id, String quantity, String word) throws IOException {
    printer.printRecord(id, "", quantity, "", word, "", "");
  }

  private void figure(String id, String state, String quantity, Unit unit, double value)
      throws IOException {
    printer.printRecord(
        id, state, quantity, unit.symbol(), FigureTable.figure(unit.fromSi(value)), "", "");
  }

  private void range(String id, String state, String quantity, Unit unit, Interval value)
      throws IOException {
    printer.printRecord(
        id,
        state,
        quantity,
        unit.symbol(),
        FigureTable.figure(unit.fromSi(value.middle())),
        FigureTable.figure(unit.fromSi(value.low())),
        FigureTable.figure(unit.fromSi(value.high())));
  }
}
