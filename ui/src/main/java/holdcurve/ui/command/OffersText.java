package holdcurve.ui.command;

import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.whatif.RepairOffer;
import holdcurve.common.number.Chance;
import holdcurve.ui.offer.Money;
import holdcurve.ui.offer.OrderWords;
import java.util.Locale;

/** Repairs with prices and chances, as text for a terminal, 80 columns wide. */
final class OffersText {
  private final Printout out;

  OffersText(Printout out) {
    this.out = out;
  }

  void print(String title, Offers offers) {
    out.println(title);
    out.println();
    out.printf(
        Locale.ROOT,
        "Chance that the hold then passes (%s after %.0f min):%n%n",
        out.pressure(offers.limit().pressure()),
        offers.limit().time() / 60);
    out.println("   Chance          Price  Minutes  Repair");
    out.printf("%9s  %13s  %7s  nothing%n", Chance.words(offers.chances().passes(0)), "", "");
    for (int i = 0; i < offers.chances().offers().size(); i++) {
      RepairOffer offer = offers.chances().offers().get(i);
      out.printf(
          Locale.ROOT,
          "%9s  %13s  %7.0f  %s%n",
          Chance.words(offers.chances().passes(1 << i)),
          offer.isPriced() ? Money.text(offer.price(), offers.prices().currency()) : "no price",
          offer.minutes(),
          offer.name());
    }
    out.println();
    print(offers.order());
  }

  private void print(CostPlan order) {
    Wrapped.print(out, "", OrderWords.summary(order));
    if (order.first().isEmpty()) {
      return;
    }
    out.println();
    for (OrderWords.Line line : OrderWords.lines(order, out.pressureUnit())) {
      String indent = "  ".repeat(1 + line.depth());
      String head = line.head().isEmpty() ? "" : line.head() + ": ";
      Wrapped.print(out, indent + head, line.text());
    }
    out.println();
    CautionLines.GENERAL.print(out);
    order.assumptions().forEach(note -> Wrapped.print(out, "  - ", note));
  }
}
