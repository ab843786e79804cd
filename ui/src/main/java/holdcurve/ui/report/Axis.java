package holdcurve.ui.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale with marks at round numbers.
 *
 * @param low value at its start
 * @param high value at its end
 * @param step between marks
 */
record Axis(double low, double high, double step) {
  private static final double[] ROUND = {1, 2, 5, 10};

  /** A scale from {@code low} to {@code high}, widened to whole marks, with about six of them. */
  static Axis around(double low, double high) {
    double rough = Math.max(high - low, 1e-9) / 6;
    double decade = Math.pow(10, Math.floor(Math.log10(rough)));
    double step = decade;
    for (double round : ROUND) {
      step = round * decade;
      if (step >= rough * 0.999) {
        break;
      }
    }
    return new Axis(
        Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step, step);
  }

  List<Double> marks() {
    List<Double> marks = new ArrayList<>();
    int count = (int) Math.round((high - low) / step);
    for (int i = 0; i <= count; i++) {
      marks.add(low + i * step);
    }
    return marks;
  }

  /** Where a value lies: 0 at the start, 1 at the end. */
  double share(double value) {
    return (value - low) / (high - low);
  }

  int decimals() {
    return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
  }
}
