package holdcurve.advice.whatif;

import holdcurve.common.input.Require;
import java.util.List;

/**
 * The user's own prices.
 *
 * @param currency sign or name, such as {@code €}; may be empty
 * @param perHour what an hour of work counts, in that currency; zero if one's own time is free
 * @param offers repairs that could be ordered
 */
public record PriceList(String currency, double perHour, List<RepairOffer> offers) {
  /** Format and version that files with prices carry. */
  public static final String FORMAT = "holdcurve-prices/1";

  public PriceList {
    offers = List.copyOf(offers);
    Require.notNegative(perHour, "price of an hour", "");
  }

  /** The same prices with another price of an hour. */
  public PriceList withPerHour(double other) {
    return new PriceList(currency, other, offers);
  }

  /**
   * Price and work of a repair. One without a price counts like the dearest of the others: nobody
   * knows that it is free. Where none has a price, all count alike.
   */
  public double cost(RepairOffer offer) {
    return offer.isPriced() ? stated(offer) : dearest();
  }

  private double stated(RepairOffer offer) {
    return offer.price() + time(offer.minutes());
  }

  private double dearest() {
    double dearest =
        offers.stream().filter(RepairOffer::isPriced).mapToDouble(this::stated).max().orElse(0);
    return dearest > 0 ? dearest : Math.max(perHour, 1);
  }

  /** Names of the repairs without a price. */
  public List<String> unpriced() {
    return offers.stream().filter(offer -> !offer.isPriced()).map(RepairOffer::name).toList();
  }

  /** What work of so many minutes counts. */
  public double time(double minutes) {
    return perHour * minutes / 60;
  }
}
