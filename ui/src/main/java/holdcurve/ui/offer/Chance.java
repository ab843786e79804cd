package holdcurve.ui.offer;

/** Probabilities in words. */
public final class Chance {
  private Chance() {}

  /** In per cent: nothing is promised, and nothing ruled out. */
  public static String words(double p) {
    return p > 0.99 ? "over 99 %" : p < 0.01 ? "under 1 %" : Math.round(100 * p) + " %";
  }
}
