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
    out.println("   Chance      Price  Minutes  Repair");
    out.printf("  %7s                      nothing%n", chance(offers.chances().passes(0)));
    for (int i = 0; i < offers.chances().offers().size(); i++) {
      RepairOffer offer = offers.chances().offers().get(i);
      out.printf(
          Locale.ROOT,
          "  %7s %10s  %7.0f  %s%n",
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
    String cost = node.cost() > 0 ? " (" + price(node.cost(), currency) + ")" : "";
    Wrapped.print(out, indent + (node.isTest() ? "Test: " : "Repair: "), node.action() + cost);
    for (OrderNode.Next next : node.branches()) {
      boolean end = next.then().isEmpty();
      if (node.isTest()) {
        Wrapped.print(
            out,
            indent + "  ",
            next.outcome() + " (" + chance(next.probability()) + ")" + (end ? ": stop." : ":"));
        print(next.then(), indent + "    ", currency);
      } else if (!end) {
        Wrapped.print(
            out,
            indent + "  ",
            "if the hold still doesn't pass (" + chance(next.probability()) + "):");
        print(next.then(), indent + "  ", currency);
      }
    }
  }

  private static String price(double value, String currency) {
    String number = String.format(Locale.ROOT, value >= 100 ? "%.0f" : "%.2f", value);
    return (number + " " + currency).strip();
  }

  private static String chance(double p) {
    return WhatIfText.chance(p);
  }
}
