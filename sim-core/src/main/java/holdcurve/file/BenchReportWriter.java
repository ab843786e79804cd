package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Mixture;
import holdcurve.bench.flowsheet.Service;
import holdcurve.bench.flowsheet.SetFlow;
import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.physics.circuit.Unit;
import java.util.Locale;

/** Writes what a bench sheet says as JSON, in bar, mL/min and percent. */
public final class BenchReportWriter {
  private static final BenchLimits LIMITS = BenchLimits.shipped();

  private BenchReportWriter() {}

  /** The report as JSON text of format {@value BenchReport#FORMAT}. */
  public static String json(BenchReport report) {
    ObjectNode root = JsonFiles.object();
    root.put("format", BenchReport.FORMAT);
    root.put("title", report.sheet().title());
    root.put("headline", report.headline().kind().word());
    Message.inBar(report.verdict()).forEach(root.withArray("verdict")::add);
    ObjectNode at = root.putObject("at");
    at.put("pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(report.point().pressure())));
    at.put("fluid", report.point().fluid().id());
    at.put("fluid_temp_C", JsonNumbers.rounded(Unit.CELSIUS.fromSi(report.point().temperature())));
    for (Service state : Service.values()) {
      report.set(state).ifPresent(set -> add(root.putObject("set_" + state.word()), set));
    }
    report.gain().ifPresent(gain -> percent(root.putObject("gain_percent"), gain));
    report.flowLeft().ifPresent(left -> percent(root.putObject("flow_left_percent"), left));
    ArrayNode injectors = root.putArray("injectors");
    report.injectors().forEach(injector -> add(injectors.addObject(), injector));
    Mixture.underLoad(report).ifPresent(m -> add(root.putObject("air_number_under_load"), m));
    Mixture.atShortPulses(report)
        .ifPresent(m -> add(root.putObject("air_number_at_short_pulse"), m));
    Message.inBar(report.notes()).forEach(root.withArray("notes")::add);
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, SetFlow set) {
    interval(node.putObject("mean_mL_min"), set.mean(), Unit.MILLILITRE_PER_MINUTE);
    node.put("spread_percent", JsonNumbers.rounded(100 * set.spread()));
    node.put("count", set.count());
  }

  private static void add(ObjectNode node, InjectorReport injector) {
    node.put("id", injector.id());
    injector.serial().ifPresent(serial -> node.put("serial", serial));
    node.put("to_do", injector.fitness().words());
    node.put("standing", injector.standing().name().toLowerCase(Locale.ROOT));
    node.put("sure", injector.sure());
    injector.troubles().forEach(node.withArray("troubles")::add);
    injector.gain().ifPresent(gain -> percent(node.putObject("gain_percent"), gain));
    for (Service state : Service.values()) {
      injector.flow(state).ifPresent(flow -> add(node.putObject(state.word()), flow));
    }
  }

  private static void add(ObjectNode node, FlowReport flow) {
    flow.staticFlow()
        .ifPresent(
            q ->
                node.put(
                    "static_mL_min", JsonNumbers.rounded(Unit.MILLILITRE_PER_MINUTE.fromSi(q))));
    flow.departure().ifPresent(d -> percent(node.putObject("out_of_line_percent"), d));
    flow.pulseDeparture()
        .ifPresent(d -> percent(node.putObject("out_of_line_at_short_pulse_percent"), d));
    flow.line()
        .ifPresent(
            line -> {
              ObjectNode fitted = node.putObject("dynamic_line");
              fitted.put(
                  "slope_mL_min",
                  JsonNumbers.rounded(Unit.MILLILITRE_PER_MINUTE.fromSi(line.slope())));
              fitted.put("time_offset_ms", JsonNumbers.rounded(1e3 * line.timeOffset()));
              fitted.put("flow_offset_mL_1000", JsonNumbers.rounded(1e9 * line.flowOffset()));
              fitted.put("linear_from_ms", JsonNumbers.rounded(1e3 * line.linearFrom()));
              fitted.put("linear_to_ms", JsonNumbers.rounded(1e3 * line.linearTo()));
            });
    flow.readings()
        .drops()
        .ifPresent(d -> node.put("drops_min", JsonNumbers.rounded(d.perMinute())));
    flow.readings().spray().ifPresent(s -> node.put("spray", LIMITS.sprayWord(s)));
    flow.readings().coil().ifPresent(ohm -> node.put("coil_ohm", JsonNumbers.rounded(ohm)));
  }

  private static void add(ObjectNode node, Mixture mixture) {
    mixture
        .richness()
        .keySet()
        .forEach(id -> node.put(id, JsonNumbers.rounded(mixture.airNumber(id))));
  }

  private static void percent(ObjectNode node, Interval share) {
    interval(node, share, Unit.PERCENT);
  }

  private static void interval(ObjectNode node, Interval value, Unit unit) {
    JsonNumbers.interval(node, value, unit);
  }
}
