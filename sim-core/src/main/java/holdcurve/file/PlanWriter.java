package holdcurve.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.advice.plan.Branch;
import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Procedure;
import holdcurve.common.message.Message;

/** Writes a plan as JSON. */
public final class PlanWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private PlanWriter() {}

  /** The plan as JSON text of format {@value Plan#FORMAT}. */
  public static String json(Plan plan) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", Plan.FORMAT);
    root.put("job", plan.job());
    root.put("seed", plan.seed());
    root.put("open_bits", JsonNumbers.rounded(plan.open()));
    ArrayNode tests = root.putArray("tests");
    plan.tests().forEach(test -> add(tests.addObject(), test));
    plan.notes().forEach(root.withArray("notes")::add);
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, PlannedTest test) {
    Procedure procedure = test.procedure();
    node.put("id", procedure.id());
    node.put("name", procedure.name());
    node.put("minutes", procedure.minutes());
    node.put("bits", JsonNumbers.rounded(test.information().bits()));
    node.put("bits_error", JsonNumbers.rounded(test.information().error()));
    node.put("bits_per_minute", JsonNumbers.rounded(test.bitsPerMinute()));
    node.put("reason", test.reason());
    procedure.clamped().stream().sorted().forEach(node.withArray("clamped")::add);
    procedure.cautions().forEach(node.withArray("cautions")::add);
    Message.inBar(procedure.steps()).forEach(node.withArray("steps")::add);
    ArrayNode branches = node.putArray("outcomes");
    test.branches().forEach(branch -> add(branches.addObject(), branch));
  }

  private static void add(ObjectNode node, Branch branch) {
    node.put("outcome", branch.outcome());
    node.put("probability", JsonNumbers.rounded(branch.probability()));
    ArrayNode believed = node.putArray("believed");
    for (Branch.Share share : branch.believed()) {
      ObjectNode entry = believed.addObject();
      entry.put("id", share.id());
      entry.put("name", share.name());
      entry.put("probability", JsonNumbers.rounded(share.probability()));
    }
  }
}
