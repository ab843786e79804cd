package holdcurve.ui.offer;

import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.plan.OrderNode;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cheapest order of tests and repairs in words, one line a step, deeper ones further in. */
public final class OrderWords {
  /** Outcomes less likely than this are not worth a line [-]. */
  private static final double RARE = 0.05;

  /** Repairs named one after the other. */
  private static final int NAMED = 3;

  /**
   * A line.
   *
   * @param depth how far in it stands, from 0
   * @param head what kind of step it is; empty for an outcome
   */
  public record Line(int depth, String head, String text) {}

  private final CostPlan order;
  private final PressureUnit unit;
  private final List<Line> lines = new ArrayList<>();

  private OrderWords(CostPlan order, PressureUnit unit) {
    this.order = order;
    this.unit = unit;
  }

  /** What the order costs, how it may end, and what has no price. */
  public static String summary(CostPlan order) {
    if (order.first().isEmpty()) {
      return "Nothing on the list would help.";
    }
    String unpriced =
        order.unpriced().isEmpty()
            ? ""
            : " No price yet: "
                + String.join("; ", order.unpriced())
                + ". "
                + (order.unpriced().size() == 1 ? "It counts" : "Each counts")
                + " like the dearest repair.";
    return order.anyPrice() ? costs(order) + unpriced : unpricedAll(order);
  }

  private static String unpricedAll(CostPlan order) {
    return "No repair has a price yet, so the likeliest comes first. The hold passes in the end with "
        + Chance.words(order.solved())
        + ".";
  }

  private static String costs(CostPlan order) {
    return "Cheapest order on average: "
        + Money.text(order.expectedCost(), order.currency())
        + " (repairs without a test first: "
        + Money.text(order.withoutTests(), order.currency())
        + "). Chance that it then holds: "
        + Chance.words(order.solved())
        + ".";
  }

  /**
   * Its steps; none where nothing would help.
   *
   * @param unit of pressures in it
   */
  public static List<Line> lines(CostPlan order, PressureUnit unit) {
    OrderWords words = new OrderWords(order, unit);
    words.add(order.first(), 0);
    return List.copyOf(words.lines);
  }

  private void add(Optional<OrderNode> step, int depth) {
    if (step.isEmpty()) {
      return;
    }
    OrderNode node = step.get();
    if (!node.isTest()) {
      lines.add(new Line(depth, "Repair", repairs(node)));
      return;
    }
    lines.add(new Line(depth, "Test", node.action() + cost(node)));
    double rest = 0;
    for (OrderNode.Next next : node.branches()) {
      if (next.probability() < RARE) {
        rest += next.probability();
      } else {
        String end = next.then().isEmpty() ? ": no repair on the list helps." : ":";
        String chance = " (" + Chance.words(next.probability()) + ")";
        lines.add(new Line(depth + 1, "", next.said().in(unit) + chance + end));
        add(next.then(), depth + 2);
      }
    }
    if (rest > 0) {
      String text = "anything else (" + Chance.words(rest) + "): plan again with it.";
      lines.add(new Line(depth + 1, "", text));
    }
  }

  /** Repairs one after the other, while the hold doesn't pass. */
  private String repairs(OrderNode first) {
    StringBuilder words = new StringBuilder(first.action() + cost(first));
    Optional<OrderNode> next = then(first);
    for (int named = 1; next.isPresent() && named < NAMED; named++) {
      words.append(". If it still falls: ");
      words.append(next.get().action()).append(cost(next.get()));
      next = then(next.get());
    }
    return words + (next.isPresent() ? ". Then plan again." : ".");
  }

  private static Optional<OrderNode> then(OrderNode repair) {
    return repair.branches().stream().flatMap(n -> n.then().stream()).findFirst();
  }

  private String cost(OrderNode node) {
    if (!node.priced()) {
      return " (no price)";
    }
    if (!order.anyPrice()) {
      return "";
    }
    return node.cost() > 0 ? " (" + Money.text(node.cost(), order.currency()) + ")" : "";
  }
}
