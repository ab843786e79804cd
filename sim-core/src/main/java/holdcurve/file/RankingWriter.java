package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.circuit.Unit;
import holdcurve.infer.FaultSize;
import holdcurve.infer.HoldCurve;
import holdcurve.infer.Interval;
import holdcurve.infer.Ranking;
import holdcurve.infer.Suspect;
import holdcurve.infer.SuspectGroup;
import java.util.Locale;

/** Writes a ranking as JSON, in bar, mL/min and seconds. */
public final class RankingWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private RankingWriter() {}

  /** The ranking as JSON text of format {@value Ranking#FORMAT}. */
  public static String json(Ranking ranking) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", Ranking.FORMAT);
    root.put("job", ranking.job());
    root.put("seed", ranking.seed());
    ObjectNode verdict = root.putObject("verdict");
    verdict.put("kind", ranking.verdict().kind().name().toLowerCase(Locale.ROOT));
    verdict.put("sentence", ranking.verdict().sentence());
    root.put("test_pressure_bar", rounded(Unit.BAR.fromSi(ranking.testPressure())));
    ArrayNode suspects = root.putArray("suspects");
    ranking.suspects().forEach(suspect -> add(suspects.addObject(), suspect));
    ArrayNode groups = root.putArray("not_told_apart");
    ranking.groups().forEach(group -> add(groups.addObject(), group));
    ranking.notes().forEach(root.withArray("notes")::add);
    return print(root);
  }

  private static void add(ObjectNode node, Suspect suspect) {
    node.put("id", suspect.id());
    node.put("name", suspect.name());
    node.put("where", suspect.where());
    node.put("probability", rounded(suspect.probability()));
    node.put("probability_error", rounded(suspect.probabilityError()));
    suspect.size().ifPresent(size -> add(node.putObject("size"), size));
    node.put("repair", suspect.repair());
    ArrayNode curves = node.putArray("curves");
    suspect.curves().forEach(curve -> add(curves.addObject(), curve));
  }

  private static void add(ObjectNode node, FaultSize size) {
    Unit unit = size.unit();
    Interval value = size.value();
    node.put("name", size.name());
    node.put("unit", unit.symbol());
    node.put("low_5_percent", rounded(unit.fromSi(value.low())));
    node.put("middle", rounded(unit.fromSi(value.middle())));
    node.put("high_95_percent", rounded(unit.fromSi(value.high())));
  }

  static void add(ObjectNode node, HoldCurve curve) {
    node.put("test", curve.test());
    column(node.putArray("time_s"), curve.time(), Unit.SECOND);
    column(node.putArray("middle_bar"), curve.middle(), Unit.BAR);
    column(node.putArray("low_5_percent_bar"), curve.low(), Unit.BAR);
    column(node.putArray("high_95_percent_bar"), curve.high(), Unit.BAR);
  }

  private static void add(ObjectNode node, SuspectGroup group) {
    group.suspects().forEach(node.withArray("suspects")::add);
    node.put("probability", rounded(group.probability()));
    node.put("reason", group.reason());
  }

  private static void column(ArrayNode array, double[] values, Unit unit) {
    for (double value : values) {
      array.add(rounded(unit.fromSi(value)));
    }
  }

  /** Four significant digits: more than any of these figures deserves, and no binary tails. */
  static double rounded(double value) {
    return Double.isFinite(value) && value != 0
        ? new java.math.BigDecimal(value).round(new java.math.MathContext(4)).doubleValue()
        : value;
  }

  static String print(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
