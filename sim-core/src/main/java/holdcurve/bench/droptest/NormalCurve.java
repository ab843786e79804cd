package holdcurve.bench.droptest;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The normal distribution function from a table, good to 1e-6, for millions of calls. */
final class NormalCurve {
  private static final double END = 8;
  private static final int PER_UNIT = 400;
  private static final double[] TABLE = table();

  private NormalCurve() {}

  private static double[] table() {
    NormalDistribution normal = new NormalDistribution();
    double[] table = new double[(int) (2 * END * PER_UNIT) + 2];
    for (int i = 0; i < table.length; i++) {
      table[i] = normal.cumulativeProbability(-END + (double) i / PER_UNIT);
    }
    return table;
  }

  /** Share of a standard normal variable below z. */
  static double below(double z) {
    if (z <= -END) {
      return 0;
    }
    if (z >= END) {
      return 1;
    }
    double place = (z + END) * PER_UNIT;
    int cell = (int) place;
    return TABLE[cell] + (place - cell) * (TABLE[cell + 1] - TABLE[cell]);
  }
}
