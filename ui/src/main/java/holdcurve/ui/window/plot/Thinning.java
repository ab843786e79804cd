package holdcurve.ui.window.plot;

import java.util.stream.IntStream;

/**
 * Leaves out points that a plot has no room for, keeping the least and the greatest of each run.
 */
public final class Thinning {
  private Thinning() {}

  /**
   * @param values in order of time
   * @param most largest number of points to keep, at least 2
   * @return indices to keep, ascending
   */
  public static int[] keep(double[] values, int most) {
    if (values.length <= most) {
      return IntStream.range(0, values.length).toArray();
    }
    int runs = most / 2;
    return IntStream.range(0, runs)
        .flatMap(
            i ->
                extremes(
                    values,
                    (int) ((long) i * values.length / runs),
                    (int) ((i + 1L) * values.length / runs)))
        .toArray();
  }

  private static IntStream extremes(double[] values, int from, int to) {
    int least = from;
    int greatest = from;
    for (int i = from; i < to; i++) {
      least = values[i] < values[least] ? i : least;
      greatest = values[i] > values[greatest] ? i : greatest;
    }
    return least == greatest
        ? IntStream.of(least)
        : IntStream.of(Math.min(least, greatest), Math.max(least, greatest));
  }
}
