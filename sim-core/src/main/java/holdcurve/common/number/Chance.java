package holdcurve.common.number;

/** Probabilities in words: no more digits than they deserve, and never 0 or 100 %. */
public final class Chance {
  private static final double RARE = 0.01;

  private Chance() {}

  /** Such as "43 %", "over 99 %" or "under 1 %". */
  public static String words(double probability) {
    if (probability > 1 - RARE) {
      return "over 99 %";
    }
    return probability < RARE ? "under 1 %" : Math.round(100 * probability) + " %";
  }
}
