package holdcurve.infer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sums over the rows of a job in which curves are linear in some coordinates x. They hold all that
 * the precision of x needs, whatever the scales: in the notation of {@link ReadingError}, each test
 * adds (1/σ²) (GᵀWG − Σ_k h_k T_kᵀT_k), with slopes G, T_k = s_kᵀ W^½ G and h_k = a/(1 + a g_k).
 * Side evidence adds its rows as they are.
 */
final class SlopeSums {
  private final JobModel data;
  private final FlatRows slopes;
  private final Squares squares;

  /** T_k, test after test. */
  private final FlatRows shapes;

  /**
   * Sums of products of slopes over rows, lower triangles row after row.
   *
   * @param ofReadings over rows of readings, weighted
   * @param ofSides over those of side evidence; empty where there are none
   */
  record Squares(double[] ofReadings, double[] ofSides) {
    static Squares none(int count, boolean sides) {
      int size = count * (count + 1) / 2;
      return new Squares(new double[size], new double[sides ? size : 0]);
    }
  }

  /**
   * What departures r say of x, whatever the scales.
   *
   * @param ofReadings GᵀWr
   * @param ofSides Gᵀr over rows of side evidence
   * @param along s_kᵀ W^½ r, test after test
   * @param squares rᵀWr
   * @param sideSquares rᵀr over rows of side evidence
   */
  record Pull(
      double[] ofReadings, double[] ofSides, double[] along, double squares, double sideSquares) {}

  /**
   * @param data readings of the job
   * @param slopes one row a reading [Pa], then those of side evidence [-]; one column a coordinate
   */
  SlopeSums(JobModel data, double[][] slopes) {
    this.data = data;
    int columns = slopes[0].length;
    this.slopes = FlatRows.of(List.of(slopes), columns);
    double[][] weighted = weighted(data, slopes);
    List<double[]> along = new ArrayList<>();
    int readings = 0;
    for (ReadingError error : data.errors()) {
      along.addAll(List.of(error.alongRows(weighted, readings)));
      readings += error.size();
    }
    shapes = FlatRows.of(along, columns);
    squares = squares(FlatRows.of(List.of(weighted), columns), readings);
  }

  /** W^½ G. */
  private static double[][] weighted(JobModel data, double[][] slopes) {
    double[][] rows = new double[slopes.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = slopes[i].clone();
    }
    int place = 0;
    for (ReadingError error : data.errors()) {
      error.weightRows(rows, place);
      place += error.size();
    }
    return rows;
  }

  private static Squares squares(FlatRows rows, int readings) {
    Squares squares = Squares.none(rows.columns(), rows.count() > readings);
    for (int i = 0; i < rows.count(); i++) {
      rows.addSquare(i, 1, i < readings ? squares.ofReadings() : squares.ofSides());
    }
    return squares;
  }

  private SlopeSums(JobModel data, FlatRows slopes, Squares squares, FlatRows shapes) {
    this.data = data;
    this.slopes = slopes;
    this.squares = squares;
    this.shapes = shapes;
  }

  /**
   * Sums of Σ_p factor_p G_p.
   *
   * @param of made from slopes each
   * @param squares of that sum
   */
  static SlopeSums sum(double[] factors, SlopeSums[] of, Squares squares) {
    FlatRows[] slopes = new FlatRows[of.length];
    FlatRows[] shapes = new FlatRows[of.length];
    for (int p = 0; p < of.length; p++) {
      slopes[p] = of[p].slopes;
      shapes[p] = of[p].shapes;
    }
    return new SlopeSums(
        of[0].data, FlatRows.mixed(factors, slopes), squares, FlatRows.mixed(factors, shapes));
  }

  Squares squares() {
    return squares;
  }

  /** Sums over rows of GᵀH + HᵀG with the slopes H of another. */
  Squares crossed(SlopeSums other) {
    double[][] both = both(other);
    SlopeSums sum = new SlopeSums(data, both);
    return new Squares(
        less(sum.squares.ofReadings, squares.ofReadings, other.squares.ofReadings),
        less(sum.squares.ofSides, squares.ofSides, other.squares.ofSides));
  }

  private double[][] both(SlopeSums other) {
    FlatRows sum = FlatRows.mixed(new double[] {1, 1}, new FlatRows[] {slopes, other.slopes});
    double[][] rows = new double[sum.count()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = sum.row(i);
    }
    return rows;
  }

  private static double[] less(double[] all, double[] one, double[] other) {
    double[] rest = new double[all.length];
    for (int i = 0; i < rest.length; i++) {
      rest[i] = all[i] - one[i] - other[i];
    }
    return rest;
  }

  int count() {
    return slopes.columns();
  }

  /** Adds G · by to departures. */
  void addProducts(double[] by, double[] departures) {
    slopes.addProducts(by, departures);
  }

  /**
   * @param departures reading minus curve [Pa], then residuals of side evidence [-]
   */
  Pull pull(double[] departures) {
    double[] along = new double[shapes.count()];
    double[] ofReadings = new double[count()];
    double squares = 0;
    int shape = 0;
    int place = 0;
    for (ReadingError error : data.errors()) {
      double[] weighted = error.weighted(departures, place);
      for (int k = 0; k < error.shapeCount(); k++) {
        along[shape++] = error.along(k, weighted);
      }
      for (double r : weighted) {
        squares += r * r;
      }
      slopes.addSum(error.weighted(weighted, 0), place, place + weighted.length, ofReadings);
      place += weighted.length;
    }
    double[] sides = Arrays.copyOfRange(departures, place, departures.length);
    double[] ofSides = new double[count()];
    slopes.addSum(sides, place, departures.length, ofSides);
    double sideSquares = 0;
    for (double r : sides) {
      sideSquares += r * r;
    }
    return new Pull(ofReadings, ofSides, along, squares, sideSquares);
  }

  /** The posterior precision of the coordinates, I + GᵀΣ⁻¹G, with these scales. */
  ScaledSlopes scaled(Scales scales) {
    double perVariance = perVariance(scales);
    double[] shares = shares(scales);
    double[] lower = new double[squares.ofReadings.length];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = perVariance * squares.ofReadings[i];
    }
    for (int i = 0; i < squares.ofSides.length; i++) {
      lower[i] += squares.ofSides[i];
    }
    for (int k = 0; k < shares.length; k++) {
      shapes.addSquare(k, -perVariance * shares[k], lower);
    }
    double[][] precision = new double[count()][];
    int place = 0;
    for (int j = 0; j < precision.length; j++) {
      precision[j] = Arrays.copyOfRange(lower, place, place + j + 1);
      precision[j][j] += 1;
      place += j + 1;
    }
    return new ScaledSlopes(this, scales, shares, precision);
  }

  /** h_k, test after test. */
  private double[] shares(Scales scales) {
    double[] shares = new double[shapes.count()];
    int shape = 0;
    for (ReadingError error : data.errors()) {
      for (int k = 0; k < error.shapeCount(); k++) {
        shares[shape++] = error.share(k, scales);
      }
    }
    return shares;
  }

  /**
   * Adds GᵀΣ⁻¹r to a gradient.
   *
   * @param shares h_k of the scales
   */
  void addGradient(Pull pull, Scales scales, double[] shares, double[] gradient) {
    double perVariance = perVariance(scales);
    double[] factors = new double[shares.length];
    for (int k = 0; k < shares.length; k++) {
      factors[k] = -perVariance * shares[k] * pull.along[k];
    }
    shapes.addSum(factors, 0, factors.length, gradient);
    for (int j = 0; j < gradient.length; j++) {
      gradient[j] += perVariance * pull.ofReadings[j] + pull.ofSides[j];
    }
  }

  /** Like {@link JobModel#misfit}. */
  double misfit(Pull pull, Scales scales, double[] shares) {
    double sum = pull.squares;
    for (int k = 0; k < shares.length; k++) {
      sum -= shares[k] * pull.along[k] * pull.along[k];
    }
    return perVariance(scales) * sum + pull.sideSquares;
  }

  /** Like {@link JobModel#logDensityAtZero}. */
  double logDensityAtZero(Scales scales) {
    return data.logDensityAtZero(scales);
  }

  /** What one reading counts, 1/σ² at its power [1/Pa²]. */
  private double perVariance(Scales scales) {
    return data.coarsening().power() / (scales.deviation() * scales.deviation());
  }
}
