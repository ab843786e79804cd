package holdcurve.common.message;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Rounds the parts of a sum so that what is shown adds up to the whole that is shown. */
public final class AddedUp {
  private AddedUp() {}

  /**
   * Pressures, to the digits in which a unit is shown.
   *
   * @param parts [Pa]
   * @param whole [Pa]
   * @return the parts as they are shown [Pa]
   */
  public static double[] pressures(List<Double> parts, double whole, PressureUnit unit) {
    double step = Message.step(unit);
    double[] shown =
        rounded(parts.stream().map(unit::fromPascal).toList(), unit.fromPascal(whole), step);
    for (int i = 0; i < shown.length; i++) {
      shown[i] = unit.toPascal(shown[i]);
    }
    return shown;
  }

  /** The difference of two pressures as both are shown [Pa]. */
  public static double difference(double first, double last, PressureUnit unit) {
    double step = Message.step(unit);
    double steps =
        Math.rint(unit.fromPascal(first) / step) - Math.rint(unit.fromPascal(last) / step);
    return unit.toPascal(steps * step);
  }

  /** Each part rounded down or up, those nearest to the next step up first. */
  static double[] rounded(List<Double> parts, double whole, double step) {
    double[] steps = parts.stream().mapToDouble(part -> Math.rint(part / step)).toArray();
    long missing =
        Math.round(
            whole / step - IntStream.range(0, steps.length).mapToDouble(i -> steps[i]).sum());
    int sign = missing < 0 ? -1 : 1;
    List<Integer> order = new ArrayList<>(IntStream.range(0, steps.length).boxed().toList());
    order.sort(Comparator.comparingDouble(i -> -sign * (parts.get(i) / step - steps[i])));
    for (int k = 0; k < Math.abs(missing) && !order.isEmpty(); k++) {
      steps[order.get(k % order.size())] += sign;
    }
    for (int i = 0; i < steps.length; i++) {
      steps[i] = steps[i] * step;
    }
    return steps;
  }
}
