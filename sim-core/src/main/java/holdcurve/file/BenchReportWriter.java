package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.circuit.Unit;
import holdcurve.infer.Interval;
import holdcurve.injector.BenchReport;
import holdcurve.injector.FlowReport;
import holdcurve.injector.InjectorReport;
import holdcurve.injector.Mixture;
import holdcurve.injector.Service;
import holdcurve.injector.SetFlow;
import java.util.Locale;

/** Writes what a bench sheet says as JSON, in bar, mL/min and percent. */
public final class BenchReportWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private BenchReportWriter() {}

  /** The report as JSON text of format {@value BenchReport#FORMAT}. */
  public static String json(BenchReport report) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", BenchReport.FORMAT);
    root.put("title", report.sheet().title());
    report.verdict().forEach(root.withArray("verdict")::add);
    ObjectNode at = root.putObject("at");
    at.put("pressure_bar", rounded(Unit.BAR.fromSi(report.point().pressure())));
    at.put("fluid", report.point().fluid().id());
    at.put("fluid_temp_C", rounded(Unit.CELSIUS.fromSi(report.point().temperature())));
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
    report.notes().forEach(root.withArray("notes")::add);
    return print(root);
  }

  private static void add(ObjectNode node, SetFlow set) {
    interval(node.putObject("mean_mL_min"), set.mean(), Unit.MILLILITRE_PER_MINUTE);
    node.put("spread_percent", rounded(100 * set.spread()));
    node.put("count", set.count());
  }

  private static void add(ObjectNode node, InjectorReport injector) {
    node.put("id", injector.id());
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
        .ifPresent(q -> node.put("static_mL_min", rounded(Unit.MILLILITRE_PER_MINUTE.fromSi(q))));
    flow.departure().ifPresent(d -> percent(node.putObject("out_of_line_percent"), d));
    flow.pulseDeparture()
        .ifPresent(d -> percent(node.putObject("out_of_line_at_short_pulse_percent"), d));
    flow.line()
        .ifPresent(
            line -> {
              ObjectNode fitted = node.putObject("dynamic_line");
              fitted.put("slope_mL_min", rounded(Unit.MILLILITRE_PER_MINUTE.fromSi(line.slope())));
              fitted.put("time_offset_ms", rounded(1e3 * line.timeOffset()));
              fitted.put("flow_offset_mL_1000", rounded(1e9 * line.flowOffset()));
              fitted.put("linear_from_ms", rounded(1e3 * line.linearFrom()));
              fitted.put("linear_to_ms", rounded(1e3 * line.linearTo()));
            });
    flow.readings().drops().ifPresent(d -> node.put("drops_min", rounded(d.perMinute())));
  }

  private static void add(ObjectNode node, Mixture mixture) {
    mixture.richness().keySet().forEach(id -> node.put(id, rounded(mixture.airNumber(id))));
  }

  private static void percent(ObjectNode node, Interval share) {
    interval(node, share, Unit.PERCENT);
  }

  private static void interval(ObjectNode node, Interval value, Unit unit) {
    node.put("low_5_percent", rounded(unit.fromSi(value.low())));
    node.put("middle", rounded(unit.fromSi(value.middle())));
    node.put("high_95_percent", rounded(unit.fromSi(value.high())));
  }

  private static double rounded(double value) {
    return Double.isFinite(value) && value != 0
        ? new java.math.BigDecimal(value).round(new java.math.MathContext(4)).doubleValue()
        : value;
  }

  private static String print(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
