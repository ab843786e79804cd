package holdcurve.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.plan.OrderNode;
import holdcurve.advice.whatif.Comparison;
import holdcurve.advice.whatif.Outlook;
import holdcurve.advice.whatif.RepairChances;
import holdcurve.advice.whatif.RepairOffer;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.physics.circuit.Unit;
import java.util.Optional;

/** Writes a comparison as JSON, in bar and seconds. */
public final class WhatIfWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private WhatIfWriter() {}

  /**
   * Results as JSON text of format {@value Comparison#FORMAT}.
   *
   * @param comparison before and after, if something was changed
   * @param chances of repairs, if a list was given
   * @param order the cheapest, likewise
   */
  public static String json(
      String title,
      long seed,
      Optional<Comparison> comparison,
      Optional<RepairChances> chances,
      Optional<CostPlan> order) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", Comparison.FORMAT);
    root.put("title", title);
    root.put("seed", seed);
    comparison.ifPresent(
        c -> {
          c.changes().forEach(root.withArray("changes")::add);
          add(root.putObject("before"), c.before());
          add(root.putObject("after"), c.after());
          c.notes().forEach(root.withArray("notes")::add);
        });
    chances.ifPresent(c -> add(root, c));
    order.ifPresent(o -> add(root.putObject("cheapest_order"), o));
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode root, RepairChances chances) {
    root.put("pass_probability_unrepaired", JsonNumbers.rounded(chances.passes(0)));
    ArrayNode repairs = root.putArray("repairs");
    for (int i = 0; i < chances.offers().size(); i++) {
      RepairOffer offer = chances.offers().get(i);
      ObjectNode node = repairs.addObject();
      node.put("name", offer.name());
      node.put("price", offer.price());
      node.put("minutes", offer.minutes());
      node.put("pass_probability", JsonNumbers.rounded(chances.passes(1 << i)));
    }
  }

  private static void add(ObjectNode node, CostPlan order) {
    node.put("currency", order.currency());
    node.put("expected_cost", JsonNumbers.rounded(order.expectedCost()));
    node.put("expected_cost_without_tests", JsonNumbers.rounded(order.withoutTests()));
    node.put("solved_probability", JsonNumbers.rounded(order.solved()));
    order.unpriced().forEach(node.withArray("unpriced")::add);
    order.first().ifPresent(first -> add(node.putObject("first"), first));
    order.assumptions().forEach(node.withArray("assumptions")::add);
  }

  private static void add(ObjectNode node, OrderNode step) {
    node.put("action", step.action());
    node.put("kind", step.isTest() ? "test" : "repair");
    node.put("cost", JsonNumbers.rounded(step.cost()));
    node.put("priced", step.priced());
    ArrayNode outcomes = node.putArray("outcomes");
    for (OrderNode.Next next : step.branches()) {
      ObjectNode branch = outcomes.addObject();
      branch.put("outcome", next.outcome());
      branch.put("probability", JsonNumbers.rounded(next.probability()));
      next.then().ifPresent(then -> add(branch.putObject("then"), then));
    }
  }

  private static void add(ObjectNode node, Outlook outlook) {
    HoldCurve hold = outlook.hold().curve();
    ObjectNode curve = node.putObject("hold");
    JsonNumbers.column(curve.putArray("time_s"), hold.time(), Unit.SECOND);
    JsonNumbers.column(curve.putArray("middle_bar"), hold.middle(), Unit.BAR);
    JsonNumbers.column(curve.putArray("low_5_percent_bar"), hold.low(), Unit.BAR);
    JsonNumbers.column(curve.putArray("high_95_percent_bar"), hold.high(), Unit.BAR);
    ObjectNode limit = node.putObject("pass_limit");
    limit.put(
        "pressure_bar", JsonNumbers.rounded(Unit.BAR.fromSi(outlook.hold().limit().pressure())));
    limit.put("time_s", JsonNumbers.rounded(outlook.hold().limit().time()));
    node.put("pass_probability", JsonNumbers.rounded(outlook.hold().passChance()));
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
