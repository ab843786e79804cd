package holdcurve.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.circuit.Unit;
import holdcurve.infer.HoldCurve;
import holdcurve.infer.Interval;
import holdcurve.whatif.Comparison;
import holdcurve.whatif.Outlook;

/** Writes a comparison as JSON, in bar and seconds. */
public final class WhatIfWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private WhatIfWriter() {}

  /** The comparison as JSON text of format {@value Comparison#FORMAT}. */
  public static String json(Comparison comparison, long seed) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", Comparison.FORMAT);
    root.put("title", comparison.title());
    root.put("seed", seed);
    comparison.changes().forEach(root.withArray("changes")::add);
    add(root.putObject("before"), comparison.before());
    add(root.putObject("after"), comparison.after());
    comparison.notes().forEach(root.withArray("notes")::add);
    return JsonNumbers.print(root);
  }

  private static void add(ObjectNode node, Outlook outlook) {
    HoldCurve hold = outlook.hold();
    ObjectNode curve = node.putObject("hold");
    JsonNumbers.column(curve.putArray("time_s"), hold.time(), Unit.SECOND);
    JsonNumbers.column(curve.putArray("middle_bar"), hold.middle(), Unit.BAR);
    JsonNumbers.column(curve.putArray("low_5_percent_bar"), hold.low(), Unit.BAR);
    JsonNumbers.column(curve.putArray("high_95_percent_bar"), hold.high(), Unit.BAR);
    ObjectNode limit = node.putObject("pass_limit");
    limit.put("pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(outlook.limit().pressure())));
    limit.put("time_s", JsonNumbers.rounded(outlook.limit().time()));
    node.put("pass_probability", JsonNumbers.rounded(outlook.passChance()));
    add(node.putObject("build_up_s"), outlook.buildUp(), Unit.SECOND);
    add(node.putObject("primed_bar"), outlook.primed(), Unit.BAR);
    add(node.putObject("idle_bar"), outlook.idle(), Unit.BAR);
    add(node.putObject("full_load_bar"), outlook.fullLoad(), Unit.BAR);
  }

  private static void add(ObjectNode node, Interval value, Unit unit) {
    node.put("low_5_percent", JsonNumbers.rounded(unit.fromSi(value.low())));
    node.put("middle", JsonNumbers.rounded(unit.fromSi(value.middle())));
    node.put("high_95_percent", JsonNumbers.rounded(unit.fromSi(value.high())));
  }
}
