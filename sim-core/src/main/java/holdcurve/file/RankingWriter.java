package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.balance.LeakShare;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Locale;

/** Writes a ranking as JSON, in bar, mL/min and seconds. */
public final class RankingWriter {
  private RankingWriter() {}

  /** The ranking as JSON text of format {@value Ranking#FORMAT}. */
  public static String json(Ranking ranking) {
    ObjectNode root = JsonFiles.object();
    root.put("format", Ranking.FORMAT);
    root.put("job", ranking.job());
    root.put("seed", ranking.seed());
    ObjectNode verdict = root.putObject("verdict");
    verdict.put("kind", ranking.verdict().kind().name().toLowerCase(Locale.ROOT));
    verdict.put("sentence", ranking.verdict().sentence());
    verdict.put("next", ranking.diagnosis().next().words().toString());
    root.put("test_pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(ranking.testPressure())));
    ArrayNode suspects = root.putArray("suspects");
    ranking.suspects().forEach(suspect -> add(suspects.addObject(), suspect));
    ArrayNode groups = root.putArray("not_told_apart");
    ranking.groups().forEach(group -> add(groups.addObject(), group));
    ArrayNode falls = root.putArray("falls");
    ranking.falls().forEach(fall -> add(falls.addObject(), fall));
    ArrayNode reasons = root.putArray("reasons");
    ranking.reasons().forEach(one -> add(reasons.addObject(), one));
    ranking.notes().forEach(note -> root.withArray("notes").add(note.toString()));
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, Suspect suspect) {
    node.put("id", suspect.id());
    node.put("name", suspect.name());
    node.put("where", suspect.where());
    node.put("probability", JsonNumbers.rounded(suspect.probability()));
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
    JsonNumbers.interval(node, value, unit);
  }

  static void add(ObjectNode node, HoldCurve curve) {
    node.put("test", curve.test());
    JsonNumbers.column(node.putArray("time_s"), curve.time(), Unit.SECOND);
    JsonNumbers.column(node.putArray("middle_bar"), curve.middle(), Unit.BAR);
    JsonNumbers.column(node.putArray("low_5_percent_bar"), curve.low(), Unit.BAR);
    JsonNumbers.column(node.putArray("high_95_percent_bar"), curve.high(), Unit.BAR);
  }

  private static void add(ObjectNode node, SuspectGroup group) {
    group.suspects().forEach(node.withArray("suspects")::add);
    node.put("probability", JsonNumbers.rounded(group.probability()));
    node.put("reason", group.reason());
  }

  private static void add(ObjectNode node, FallReport fall) {
    node.put("test", fall.test());
    node.put("from_s", JsonNumbers.rounded(fall.from()));
    node.put("to_s", JsonNumbers.rounded(fall.to()));
    node.put("first_bar", JsonNumbers.rounded(Unit.BAR.fromSi(fall.first())));
    node.put("last_bar", JsonNumbers.rounded(Unit.BAR.fromSi(fall.last())));
    node.put("fall_bar", JsonNumbers.rounded(Unit.BAR.fromSi(fall.fall())));
    ArrayNode shares = node.putArray("shares");
    for (FallShare share : fall.shares()) {
      ObjectNode one = shares.addObject();
      one.put("cause", share.cause().name().toLowerCase(Locale.ROOT));
      add(one.putObject("bar"), share.pressure(), Unit.BAR);
      add(one.putObject("mL"), share.volume(), Unit.MILLILITRE);
    }
    ArrayNode leaks = node.putArray("leaks_if_true");
    for (LeakShare leak : fall.leaks()) {
      ObjectNode one = leaks.addObject();
      one.put("suspect", leak.suspect()).put("name", leak.name()).put("where", leak.where());
      add(one.putObject("bar"), leak.pressure(), Unit.BAR);
      add(one.putObject("mL"), leak.volume(), Unit.MILLILITRE);
    }
  }

  private static void add(ObjectNode node, Amount amount, Unit unit) {
    node.put("low_5_percent", JsonNumbers.rounded(unit.fromSi(amount.low())));
    node.put("mean", JsonNumbers.rounded(unit.fromSi(amount.mean())));
    node.put("high_95_percent", JsonNumbers.rounded(unit.fromSi(amount.high())));
  }

  private static void add(ObjectNode node, Reasons reasons) {
    node.put("suspect", reasons.suspect());
    node.put("rival", reasons.rival());
    for (String side : List.of("for", "against")) {
      ArrayNode list = node.putArray(side);
      for (Reason reason : reasons.reasons()) {
        if (reason.speaksFor() == side.equals("for")) {
          ObjectNode one = list.addObject();
          one.put("what", reason.what());
          one.put("log_factor", JsonNumbers.rounded(reason.weight()));
        }
      }
    }
  }
}
