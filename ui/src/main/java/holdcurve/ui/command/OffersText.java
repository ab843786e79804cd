package holdcurve.ui.command;

import holdcurve.circuit.Unit;
import holdcurve.plan.CostPlan;
import holdcurve.plan.OrderNode;
import holdcurve.whatif.RepairOffer;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;

/** Repairs with prices and chances, as text for a terminal, 80 columns wide. */
final class OffersText {
  /** Outcomes less likely than this are not worth a line [-]. */
  private static final double RARE = 0.05;

  /** Repairs named one after the other. */
  private static final int NAMED = 3;

  private final PrintWriter out;

  OffersText(PrintWriter out) {
    this.out = out;
  }

  void print(String title, Offers offers) {
    out.println(title);
    out.println();
    out.printf(
        Locale.ROOT,
        "Chance that the hold then passes (%.2f bar after %.0f min):%n%n",
        Unit.BAR.fromSi(offers.limit().pressure()),
        offers.limit().time() / 60);
    out.println("   Chance          Price  Minutes  Repair");
    out.printf("%9s  %13s  %7s  nothing%n", chance(offers.chances().passes(0)), "", "");
    for (int i = 0; i < offers.chances().offers().size(); i++) {
      RepairOffer offer = offers.chances().offers().get(i);
      out.printf(
          Locale.ROOT,
          "%9s  %13s  %7.0f  %s%n",
          chance(offers.chances().passes(1 << i)),
          price(offer.price(), offers.prices().currency()),
          offer.minutes(),
          offer.name());
    }
    out.println();
    print(offers.order());
  }

  private void print(CostPlan order) {
    String currency = order.currency();
    if (order.first().isEmpty()) {
      out.println("Nothing on the list would help.");
      return;
    }
    Wrapped.print(
        out,
        "",
        "Cheapest order on average: "
            + price(order.expectedCost(), currency)
            + " (repairs alone, without a further test: "
            + price(order.withoutTests(), currency)
            + "); the hold passes in the end with "
            + chance(order.solved())
            + ".");
    out.println();
    print(order.first(), "  ", currency);
    out.println();
    order.assumptions().forEach(note -> Wrapped.print(out, "  - ", note));
  }

  private void print(Optional<OrderNode> step, String indent, String currency) {
    if (step.isEmpty()) {
      return;
    }
    OrderNode node = step.get();
    if (!node.isTest()) {
      Wrapped.print(out, indent + "Repair: ", repairs(node, currency));
      return;
    }
    Wrapped.print(out, indent + "Test: ", node.action() + cost(node, currency));
    double rest = 0;
    for (OrderNode.Next next : node.branches()) {
      if (next.probability() < RARE) {
        rest += next.probability();
      } else {
        String end = next.then().isEmpty() ? ": stop." : ":";
        Wrapped.print(
            out, indent + "  ", next.outcome() + " (" + chance(next.probability()) + ")" + end);
        print(next.then(), indent + "    ", currency);
      }
    }
    if (rest > 0) {
      Wrapped.print(
          out, indent + "  ", "anything else (" + chance(rest) + "): plan again with it.");
    }
  }

  /** Repairs one after the other, while the hold doesn't pass. */
  private static String repairs(OrderNode first, String currency) {
    StringBuilder words = new StringBuilder(first.action() + cost(first, currency));
    Optional<OrderNode> next = then(first);
    for (int named = 1; next.isPresent() && named < NAMED; named++) {
      words.append("; if the hold still doesn't pass, ");
      words.append(next.get().action()).append(cost(next.get(), currency));
      next = then(next.get());
    }
    return words + (next.isPresent() ? "; then plan again." : ".");
  }

  private static Optional<OrderNode> then(OrderNode repair) {
    return repair.branches().stream().flatMap(n -> n.then().stream()).findFirst();
  }

  private static String cost(OrderNode node, String currency) {
    return node.cost() > 0 ? " (" + price(node.cost(), currency) + ")" : "";
  }

  private static String price(double value, String currency) {
    boolean whole = value >= 100 || value == Math.rint(value);
    String number = String.format(Locale.ROOT, whole ? "%.0f" : "%.2f", value);
    return (number + " " + currency).strip();
  }

  private static String chance(double p) {
    return WhatIfText.chance(p);
  }
}
