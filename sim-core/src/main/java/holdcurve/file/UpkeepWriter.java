package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Upkeep;
import holdcurve.record.limit.PassLimit;
import holdcurve.record.refit.RefitList;
import holdcurve.record.refit.RefitStep;

/** Puts the entries {@code repairs}, {@code pass} and {@code refit} into a job's JSON. */
final class UpkeepWriter {
  private static final double SECONDS = 60;

  private UpkeepWriter() {}

  /** Writes what the job states; what it leaves to the usual is left out. */
  static void put(ObjectNode job, Upkeep upkeep) {
    job.remove(UpkeepReader.ENTRIES);
    if (!upkeep.repairs().isEmpty()) {
      ArrayNode repairs = job.putArray("repairs");
      upkeep.repairs().forEach(repair -> put(repairs.addObject(), repair));
    }
    if (upkeep.passStated()) {
      put(job.putObject("pass"), upkeep.pass());
    }
    if (upkeep.refitStated()) {
      put(job.putArray("refit"), upkeep.refit());
    }
  }

  private static void put(ObjectNode node, Repair repair) {
    node.put("date", repair.date().toString());
    putText(node, "part", repair.part());
    putText(node, "fault", repair.fault());
    putText(node, "after_test", repair.afterTest());
    putText(node, "note", repair.note());
  }

  private static void put(ObjectNode node, PassLimit pass) {
    node.put("least_bar", JsonNumbers.stated(Unit.BAR.fromSi(pass.pressure())));
    node.put("after_min", JsonNumbers.stated(pass.time() / SECONDS));
  }

  /** Steps with their texts, so that the record says what was ticked whatever is shipped later. */
  static void put(ArrayNode list, RefitList refit) {
    for (RefitStep step : refit.steps()) {
      ObjectNode node = list.addObject();
      node.put("id", step.id());
      node.put("text", step.text());
      putText(node, "caution", step.caution());
      step.tick().ifPresent(tick -> node.put("done", tick.date().toString()).put("by", tick.by()));
    }
  }

  private static void putText(ObjectNode node, String entry, String text) {
    if (!text.isEmpty()) {
      node.put(entry, text);
    }
  }
}
