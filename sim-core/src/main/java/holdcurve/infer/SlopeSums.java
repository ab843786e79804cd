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
  private final int readings;

  /** The slopes are Σ_p factor_p parts_p, weighted: summing them would cost more than their use. */
  private final double[] factors;

  private final double[][][] parts;
  private final Squares squares;
  private final double[][][] shapes;

  /**
   * Sums of products of slopes over rows, lower triangles.
   *
   * @param ofReadings over rows of readings, weighted
   * @param ofSides over those of side evidence
   */
  record Squares(double[][] ofReadings, double[][] ofSides) {
    static Squares none(int count) {
      return new Squares(triangle(count), triangle(count));
    }

    /** A copy, times a factor. */
    Squares scaled(double factor) {
      Squares copy = none(ofReadings.length);
      copy.add(factor, this);
      return copy;
    }

    void add(double factor, Squares other) {
      addTo(ofReadings, factor, other.ofReadings);
      addTo(ofSides, factor, other.ofSides);
    }
  }

  /**
   * @param data readings of the job
   * @param slopes one row a reading [Pa], then those of side evidence [-]; one column a coordinate
   */
  SlopeSums(JobModel data, double[][] slopes) {
    this.data = data;
    double[][] rows = Arrays.stream(slopes).map(double[]::clone).toArray(double[][]::new);
    factors = new double[] {1};
    parts = new double[][][] {rows};
    shapes = new double[data.errors().size()][][];
    int place = 0;
    for (int test = 0; test < shapes.length; test++) {
      data.errors().get(test).weightRows(rows, place);
      shapes[test] = data.errors().get(test).alongRows(rows, place);
      place += data.errors().get(test).size();
    }
    readings = place;
    squares = Squares.none(slopes[0].length);
    for (int i = 0; i < rows.length; i++) {
      addSquare(1, rows[i], i < readings ? squares.ofReadings() : squares.ofSides());
    }
  }

  private SlopeSums(
      SlopeSums like, double[] factors, double[][][] parts, Squares squares, double[][][] shapes) {
    data = like.data;
    readings = like.readings;
    this.factors = factors;
    this.parts = parts;
    this.squares = squares;
    this.shapes = shapes;
  }

  /**
   * Sums of Σ_p factor_p G_p.
   *
   * @param of made from slopes each
   */
  static SlopeSums sum(double[] factors, SlopeSums[] of, Squares squares) {
    double[][][] shapes = new double[of[0].shapes.length][][];
    for (int test = 0; test < shapes.length; test++) {
      shapes[test] = zeros(of[0].shapes[test]);
      for (int p = 0; p < of.length; p++) {
        addTo(shapes[test], factors[p], of[p].shapes[test]);
      }
    }
    double[][][] parts = new double[of.length][][];
    Arrays.setAll(parts, p -> of[p].parts[0]);
    return new SlopeSums(of[0], factors, parts, squares, shapes);
  }

  Squares squares() {
    return squares;
  }

  /** Sums over rows of GᵀH + HᵀG with the slopes H of another. */
  Squares crossed(SlopeSums other) {
    double[][] both = zeros(parts[0]);
    addTo(both, 1, parts[0]);
    addTo(both, 1, other.parts[0]);
    Squares crossed = Squares.none(squares.ofReadings().length);
    for (int i = 0; i < both.length; i++) {
      addSquare(1, both[i], i < readings ? crossed.ofReadings() : crossed.ofSides());
    }
    crossed.add(-1, squares);
    crossed.add(-1, other.squares);
    return crossed;
  }

  private static double[][] triangle(int count) {
    double[][] lower = new double[count][];
    for (int j = 0; j < count; j++) {
      lower[j] = new double[j + 1];
    }
    return lower;
  }

  private static double[][] zeros(double[][] like) {
    double[][] zeros = new double[like.length][];
    for (int i = 0; i < zeros.length; i++) {
      zeros[i] = new double[like[i].length];
    }
    return zeros;
  }

  private static void addTo(double[][] to, double factor, double[][] from) {
    for (int i = 0; i < to.length; i++) {
      add(factor, from[i], to[i]);
    }
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
    return squares.ofReadings().length;
  }

  /** The posterior precision of the coordinates, I + GᵀΣ⁻¹G, with these scales. */
  ScaledSlopes scaled(Scales scales) {
    double perVariance = perVariance(scales);
    double[][] ofReadings = squares.ofReadings();
    double[][] ofSides = squares.ofSides();
    double[][] precision = new double[count()][];
    for (int j = 0; j < precision.length; j++) {
      precision[j] = new double[j + 1];
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
    double perVariance = perVariance(scales);
    int place = 0;
    for (int test = 0; test < shapes.length; test++) {
      ReadingError error = data.errors().get(test);
      double[] weighted = error.weighted(departures, place);
      for (int i = 0; i < weighted.length; i++) {
        addRow(perVariance * weighted[i], place + i, gradient);
      }
      for (int k = 0; k < shapes[test].length; k++) {
        double share = perVariance * error.share(k, scales) * error.along(k, weighted);
        add(-share, shapes[test][k], gradient);
      }
      place += weighted.length;
    }
    for (int i = readings; i < departures.length; i++) {
      addRow(departures[i], i, gradient);
    }
  }

  private void addRow(double factor, int i, double[] to) {
    for (int p = 0; p < parts.length; p++) {
      add(factor * factors[p], parts[p][i], to);
    }
  }

  /** What one reading counts, 1/σ² at its power [1/Pa²]. */
  private double perVariance(Scales scales) {
    return data.coarsening().power() / (scales.deviation() * scales.deviation());
  }

  private static void add(double factor, double[] row, double[] to) {
    for (int j = 0; j < to.length; j++) {
      to[j] += factor * row[j];
    }
  }
}
