package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import java.util.List;

/** Puts the entry {@code findings} into a job's JSON. */
final class FindingWriter {
  private FindingWriter() {}

  /** Leaves the entry out where there is no finding. */
  static void put(ObjectNode job, List<Finding> findings) {
    job.remove(FindingReader.ENTRY);
    if (!findings.isEmpty()) {
      ArrayNode list = job.putArray(FindingReader.ENTRY);
      findings.forEach(finding -> put(list.addObject(), finding));
    }
  }

  private static void put(ObjectNode node, Finding finding) {
    if (finding instanceof JointLook look) {
      node.put("kind", FindingReader.JOINT);
      look.part().ifPresent(part -> node.put("part", part));
      look.end().ifPresent(end -> node.put("end", end));
      node.put("seen", look.wet() ? "wet" : "dry");
      if (look.wiped()) {
        node.put("wiped", true);
      }
      put(node, look.when());
    } else if (finding instanceof DropCount count) {
      node.put("kind", FindingReader.DROPS).put("part", count.part());
      count.number().ifPresent(number -> node.put("number", number));
      node.put("drops", count.drops()).put("minutes", JsonNumbers.stated(count.duration() / 60));
      put(node, count.when());
    } else if (finding instanceof ReferenceHoseLook look) {
      node.put("kind", FindingReader.REFERENCE_HOSE).put("fuel", look.fuel());
      put(node, look.when());
    } else if (finding instanceof DrawOff drawOff) {
      put(node, drawOff);
    } else if (finding instanceof DropTestResult result) {
      node.put("kind", FindingReader.DROP_TEST).put("part", result.part());
      put(node, "low", result.low());
      put(node, "high", result.high());
      put(node, "stays_open", result.staysOpen());
      node.put("watched", result.watched());
    }
    finding.date().ifPresent(date -> node.put("date", date.toString()));
  }

  private static void put(ObjectNode node, String name, List<String> names) {
    if (!names.isEmpty()) {
      names.forEach(node.putArray(name)::add);
    }
  }

  private static void put(ObjectNode node, DrawOff drawOff) {
    node.put("kind", FindingReader.DRAW_OFF);
    node.put("drawn_mL", JsonNumbers.stated(Unit.MILLILITRE.fromSi(drawOff.volume())));
    node.put("from_bar", JsonNumbers.stated(Unit.BAR.fromSi(drawOff.from())));
    node.put("to_bar", JsonNumbers.stated(Unit.BAR.fromSi(drawOff.to())));
    node.put("seconds", JsonNumbers.stated(drawOff.duration()));
    if (!drawOff.clamped().isEmpty()) {
      drawOff.clamped().stream().sorted().forEach(node.putArray("clamped")::add);
    }
  }

  private static void put(ObjectNode node, Moment moment) {
    moment.test().ifPresent(test -> node.put("test", test));
    moment
        .pressure()
        .ifPresent(p -> node.put("pressure_bar", JsonNumbers.stated(Unit.BAR.fromSi(p))));
  }
}
