package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.Firing;
import holdcurve.bench.droptest.IdleFall;
import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.physics.circuit.Unit;
import java.util.Locale;

/** Writes what a drop-per-pulse test says as JSON, and a test as a table. */
public final class DropReportWriter {
  private DropReportWriter() {}

  /** The report as JSON text of format {@value DropReport#FORMAT}. */
  public static String json(DropReport report) {
    ObjectNode root = JsonFiles.object();
    root.put("format", DropReport.FORMAT);
    root.put("title", report.test().title());
    root.put("headline", report.headline().word());
    Message.inBar(report.verdict()).forEach(root.withArray("verdict")::add);
    root.put("pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(report.pressure())));
    root.put("repeats_done", report.advice().fewest());
    root.put("repeats_advised", report.advice().repeats());
    ArrayNode injectors = root.putArray("injectors");
    report.injectors().forEach(injector -> add(injectors.addObject(), injector));
    Message.inBar(report.notes()).forEach(root.withArray("notes")::add);
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, InjectorDrop injector) {
    node.put("id", injector.id());
    node.put("firings", injector.firings());
    node.put("mean_drop_bar", JsonNumbers.rounded(Unit.BAR.fromSi(injector.meanDrop())));
    add(node.putObject("out_of_line_percent"), injector.departure(), Unit.PERCENT);
    node.put("standing", injector.standing().name().toLowerCase(Locale.ROOT));
    node.put("sure", injector.sure());
    node.put("moves_the_needle", injector.moves());
    node.put("stays_open", injector.staysOpen());
    node.put("probability_lowest", JsonNumbers.rounded(injector.lowest()));
    injector
        .flow()
        .ifPresent(flow -> add(node.putObject("flow_mL_min"), flow, Unit.MILLILITRE_PER_MINUTE));
  }

  private static void add(ObjectNode node, Interval value, Unit unit) {
    JsonNumbers.interval(node, value, unit);
  }

  /** A test as the table that {@link DropTestReader} reads. */
  public static String table(DropTest test) {
    StringBuilder text = new StringBuilder("# format: " + DropTest.FORMAT + "\n");
    text.append("# title: ").append(test.title().replaceAll("\\s+", " ")).append('\n');
    text.append("# gauge_resolution_bar: ").append(bar(test.resolution())).append('\n');
    text.append("# pulses: ").append(test.shot().pulses()).append('\n');
    text.append("# pulse_ms: ").append(Words.number(1e3 * test.shot().width())).append('\n');
    text.append("# wait_s: ").append(Words.number(test.shot().pause())).append('\n');
    if (!test.idleFalls().isEmpty()) {
      text.append("# idle_s: ").append(Words.number(test.idleFalls().get(0).time())).append('\n');
    }
    boolean watched = test.watch() > 0;
    if (watched) {
      text.append("# later_s: ").append(Words.number(test.watch())).append('\n');
    }
    text.append("injector,before_bar,after_bar").append(watched ? ",later_bar\n" : "\n");
    for (Firing firing : test.firings()) {
      row(text, firing.injector(), firing.before(), firing.after());
      firing.later().ifPresent(later -> text.append(',').append(bar(later)));
      text.append('\n');
    }
    for (IdleFall fall : test.idleFalls()) {
      row(text, "idle", fall.before(), fall.after());
      text.append('\n');
    }
    return text.toString();
  }

  private static void row(StringBuilder text, String injector, double before, double after) {
    text.append(cell(injector)).append(',').append(bar(before)).append(',').append(bar(after));
  }

  private static String cell(String injector) {
    String text = SpreadsheetText.harmless(injector);
    return text.matches("[^\",;\\s#]+") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static String bar(double pascals) {
    return String.format(Locale.ROOT, "%.3f", pascals / 1e5).replaceAll("0$", "");
  }
}
