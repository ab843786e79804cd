package holdcurve.infer;

import java.util.Arrays;

/**
 * Sums over the rows of a job in which curves are linear in some coordinates x. They hold all that
 * the precision of x needs, whatever the scales: in the notation of {@link ReadingError}, each test
 * adds (1/σ²) (GᵀWG − Σ_k h_k T_kᵀT_k), with slopes G, T_k = s_kᵀ W^½ G and h_k = a/(1 + a g_k).
 * Side evidence adds its rows as they are.
 */
final class SlopeSums {
  private final JobModel data;
  private final double[][] rows;
  private final int readings;
  private final double[][] ofReadings;
  private final double[][] ofSides;
  private final double[][][] shapes;

  /**
   * @param data readings of the job
   * @param slopes one row a reading [Pa], then those of side evidence [-]; one column a coordinate
   */
  SlopeSums(JobModel data, double[][] slopes) {
    this.data = data;
    rows = Arrays.stream(slopes).map(double[]::clone).toArray(double[][]::new);
    int count = slopes[0].length;
    shapes = new double[data.errors().size()][][];
    int place = 0;
    for (int test = 0; test < shapes.length; test++) {
      data.errors().get(test).weightRows(rows, place);
      shapes[test] = data.errors().get(test).alongRows(rows, place);
      place += data.errors().get(test).size();
    }
    readings = place;
    ofReadings = gram(0, readings, count);
    ofSides = gram(readings, rows.length, count);
  }

  private double[][] gram(int from, int to, int count) {
    double[][] gram = new double[count][];
    for (int j = 0; j < count; j++) {
      gram[j] = new double[j + 1];
    }
    for (int i = from; i < to; i++) {
      addSquare(1, rows[i], gram);
    }
    return gram;
  }

  /** Adds factor · row rowᵀ to a lower triangle; many slopes are zero. */
  static void addSquare(double factor, double[] row, double[][] lower) {
    for (int j = 0; j < row.length; j++) {
      double entry = factor * row[j];
      if (entry != 0) {
        for (int k = 0; k <= j; k++) {
          lower[j][k] += entry * row[k];
        }
      }
    }
  }

  int count() {
    return ofReadings.length;
  }

  /** The posterior precision of the coordinates, I + GᵀΣ⁻¹G, with these scales. */
  ScaledSlopes scaled(Scales scales) {
    double perVariance = 1 / (scales.deviation() * scales.deviation());
    double[][] precision = new double[count()][];
    for (int j = 0; j < precision.length; j++) {
      precision[j] = new double[precision.length];
      for (int k = 0; k <= j; k++) {
        precision[j][k] = perVariance * ofReadings[j][k] + ofSides[j][k];
      }
      precision[j][j] += 1;
    }
    for (int test = 0; test < shapes.length; test++) {
      for (int k = 0; k < shapes[test].length; k++) {
        double share = data.errors().get(test).share(k, scales);
        addSquare(-perVariance * share, shapes[test][k], precision);
      }
    }
    return new ScaledSlopes(data, this, scales, precision);
  }

  /**
   * Adds GᵀΣ⁻¹r to a gradient.
   *
   * @param departures r: reading minus curve [Pa], then residuals of side evidence [-]
   */
  void addGradient(double[] departures, Scales scales, double[] gradient) {
    double perVariance = 1 / (scales.deviation() * scales.deviation());
    int place = 0;
    for (int test = 0; test < shapes.length; test++) {
      ReadingError error = data.errors().get(test);
      double[] weighted = error.weighted(departures, place);
      for (int i = 0; i < weighted.length; i++) {
        add(perVariance * weighted[i], rows[place + i], gradient);
      }
      for (int k = 0; k < shapes[test].length; k++) {
        double share = perVariance * error.share(k, scales) * error.along(k, weighted);
        add(-share, shapes[test][k], gradient);
      }
      place += weighted.length;
    }
    for (int i = readings; i < rows.length; i++) {
      add(departures[i], rows[i], gradient);
    }
  }

  private static void add(double factor, double[] row, double[] to) {
    for (int j = 0; j < to.length; j++) {
      to[j] += factor * row[j];
    }
  }
}
