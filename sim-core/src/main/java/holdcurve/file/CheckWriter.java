package holdcurve.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.advice.check.RepairCheck;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.PassMark;
import java.util.List;
import java.util.Locale;

/** Writes the check of a repair as JSON, in bar, mL/min and seconds. */
public final class CheckWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private CheckWriter() {}

  /** The check as JSON text of format {@value RepairCheck#FORMAT}. */
  public static String json(RepairCheck check) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", RepairCheck.FORMAT);
    root.put("job", check.job());
    ObjectNode verdict = root.putObject("verdict");
    verdict.put("kind", check.verdict().kind().name().toLowerCase(Locale.ROOT));
    verdict.put("sentence", check.verdict().sentence());
    verdict.put("next", check.verdict().next().toString());
    root.put("probability_sound", JsonNumbers.rounded(check.sound()));
    check.loss().ifPresent(loss -> add(root.putObject("loss_if_it_leaks"), loss));
    check.places().forEach(root.withArray("look_at")::add);
    ArrayNode tests = root.putArray("checked");
    check.timeline().checked().tests().stream().map(HoldTest::id).forEach(tests::add);
    ArrayNode marks = root.putArray("pass");
    check.marks().forEach(mark -> add(marks.addObject(), mark, check));
    bands(root.putArray("should_show"), check.described());
    bands(root.putArray("by_its_own_history"), check.remembered());
    check.notes().forEach(note -> root.withArray("notes").add(note.toString()));
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, Interval loss) {
    Unit unit = Unit.MILLILITRE_PER_MINUTE;
    node.put("unit", unit.symbol());
    JsonNumbers.interval(node, loss, unit);
  }

  private static void add(ObjectNode node, PassMark mark, RepairCheck check) {
    node.put("test", mark.test());
    node.put("least_bar", JsonNumbers.rounded(Unit.BAR.fromSi(check.limit().pressure())));
    node.put("after_s", check.limit().time());
    if (Double.isFinite(mark.reading())) {
      node.put("reading_bar", JsonNumbers.rounded(Unit.BAR.fromSi(mark.reading())));
    }
    node.put("outcome", mark.outcome().name().toLowerCase(Locale.ROOT));
  }

  private static void bands(ArrayNode list, List<HoldCurve> curves) {
    curves.forEach(curve -> RankingWriter.add(list.addObject(), curve));
  }
}
