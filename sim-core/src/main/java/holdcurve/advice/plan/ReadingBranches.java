package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Sorts the outcomes of a hold into two or three that a person can tell at the gauge: by one
 * reading, with the limits that tell most about which hypothesis is true.
 */
final class ReadingBranches {
  /** Limits are rounded to what a needle shows [Pa]. */
  private static final double STEP = 5e3;

  /** A sorting that tells less than this is not worth words [bit]. */
  private static final double WORTH = 0.03;

  private final OpenHypotheses futures;
  private final double[][][] readings;
  private final double[] times;
  private final Set<String> clamped;

  /**
   * @param readings hypothesis, simulated outcome, reading [Pa gauge]
   * @param times of the readings [s]
   */
  ReadingBranches(
      OpenHypotheses futures, double[][][] readings, double[] times, Set<String> clamped) {
    this.futures = futures;
    this.readings = readings;
    this.times = times;
    this.clamped = clamped;
  }

  /**
   * @param reading which one
   * @param limits ascending [Pa gauge]
   */
  private record Sorting(int reading, double[] limits, double bits) {}

  /** Empty where no reading tells anything by itself. */
  List<Branch> branches() {
    Sorting best = new Sorting(0, new double[0], WORTH);
    for (int reading : new int[] {times.length - 1, place(60)}) {
      best = better(best, reading);
    }
    return best.limits().length == 0 ? List.of() : words(best);
  }

  private int place(double time) {
    return Math.abs(Arrays.binarySearch(times, time));
  }

  private Sorting better(Sorting known, int reading) {
    Sorting best = known;
    double[] limits = limits(reading);
    for (double one : limits) {
      best = better(best, reading, one);
    }
    if (best.reading() == reading && best.limits().length == 1) {
      double first = best.limits()[0];
      Sorting two = new Sorting(reading, best.limits(), best.bits() + WORTH);
      for (double other : limits) {
        if (other != first) {
          two = better(two, reading, Math.min(first, other), Math.max(first, other));
        }
      }
      best = two.limits().length == 2 ? two : best;
    }
    return best;
  }

  private Sorting better(Sorting best, int reading, double... limits) {
    double bits = new SortedOutcomes(futures.prior(), sorted(reading, limits)).information().bits();
    return bits > best.bits() ? new Sorting(reading, limits, bits) : best;
  }

  /** Limits to try: from the lowest outcomes to the highest, in steps that a needle shows. */
  private double[] limits(int reading) {
    double[] all =
        Arrays.stream(readings)
            .flatMapToDouble(rows -> Arrays.stream(rows).mapToDouble(row -> row[reading]))
            .sorted()
            .toArray();
    double low = all[all.length / 50];
    double high = all[all.length - 1 - all.length / 50];
    int count = (int) Math.min(24, Math.max(1, (high - low) / STEP));
    double[] limits = new double[count];
    for (int i = 0; i < count; i++) {
      limits[i] = Math.rint((low + (high - low) * (i + 0.5) / count) / STEP) * STEP;
    }
    return Arrays.stream(limits).distinct().toArray();
  }

  private double[][][] sorted(int reading, double[] limits) {
    double[][][] chance = new double[readings.length][][];
    for (int h = 0; h < readings.length; h++) {
      chance[h] = new double[readings[h].length][limits.length + 1];
      for (int i = 0; i < chance[h].length; i++) {
        int o = 0;
        while (o < limits.length && readings[h][i][reading] >= limits[o]) {
          o++;
        }
        chance[h][i][o] = 1;
      }
    }
    return chance;
  }

  private List<Branch> words(Sorting sorting) {
    double[][] chances =
        new SortedOutcomes(futures.prior(), sorted(sorting.reading(), sorting.limits())).chances();
    List<Branch> branches = new ArrayList<>();
    for (int o = sorting.limits().length; o >= 0; o--) {
      branches.add(Branches.of(futures, outcome(sorting, o), chances, o));
    }
    return branches;
  }

  private Message outcome(Sorting sorting, int o) {
    double[] limits = sorting.limits();
    String after = when(times[sorting.reading()]);
    if (o == limits.length) {
      return Message.of("%s or more after %s", Message.pressure(shown(limits[o - 1])), after);
    }
    return o == 0
        ? Message.of("less than %s after %s", Message.pressure(shown(limits[0])), after)
        : Message.of(
            "%s to %s after %s",
            Message.number(shown(limits[o - 1])), Message.pressure(shown(limits[o])), after);
  }

  /** A needle stands at its stop below nothing [Pa gauge]. */
  private static double shown(double pascals) {
    return Math.max(0, pascals);
  }

  private static String when(double seconds) {
    return seconds < 120
        ? String.format(Locale.ROOT, "%.0f s", seconds)
        : String.format(Locale.ROOT, "%.0f min", seconds / 60);
  }
}
