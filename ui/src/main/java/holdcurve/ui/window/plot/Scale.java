package holdcurve.ui.window.plot;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Ends of an axis and the distance of its ticks.
 *
 * @param low lower end
 * @param high upper end
 * @param tick distance of ticks: 1, 2 or 5 times a power of ten
 */
public record Scale(double low, double high, double tick) {
  private static final int MOST_TICKS = 7;

  /**
   * A scale that shows {@code least} to {@code most} with some room beyond.
   *
   * @param margin room beyond each end, as a share of the range shown [-]
   * @param narrowest range to show at least, so that values that hardly differ look so
   */
  public static Scale around(double least, double most, double margin, double narrowest) {
    double middle = (least + most) / 2;
    double half = (0.5 + margin) * Math.max(most - least, narrowest);
    return new Scale(middle - half, middle + half, roundUp(2 * half / MOST_TICKS));
  }

  private static double roundUp(double distance) {
    double decade = Math.pow(10, Math.floor(Math.log10(distance)));
    for (double step : new double[] {1, 2, 5}) {
      if (distance <= step * decade * (1 + 1e-9)) {
        return step * decade;
      }
    }
    return 10 * decade;
  }

  /**
   * A part of this scale with ticks of its own.
   *
   * @param from share of the range at which it begins [-]
   * @param to share at which it ends [-]
   */
  Scale part(double from, double to) {
    double range = high - low;
    return new Scale(
        low + from * range, low + to * range, roundUp((to - from) * range / MOST_TICKS));
  }

  /** The multiples of the tick distance between the ends, ascending. */
  public List<Double> ticks() {
    return LongStream.rangeClosed((long) Math.ceil(low / tick), (long) Math.floor(high / tick))
        .mapToObj(i -> i * tick)
        .toList();
  }

  /** Decimals that tick labels need. */
  public int decimals() {
    return (int) Math.max(0, Math.ceil(-Math.log10(tick) - 1e-9));
  }
}
