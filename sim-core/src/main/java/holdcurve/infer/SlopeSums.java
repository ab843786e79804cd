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

  /** W^½ G; null of sums that became what they are. */
  private final FlatRows weighted;

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
    this.weighted = FlatRows.of(List.of(weighted), columns);
    squares = squares(this.weighted, readings);
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

  private SlopeSums(SlopeSums like) {
    data = like.data;
    weighted = null;
    slopes = like.slopes.blank();
    shapes = like.shapes.blank();
    squares = Squares.none(slopes.columns(), like.squares.ofSides.length > 0);
  }

  /** Sums as large as these for {@link #become}. */
  SlopeSums blank() {
    return new SlopeSums(this);
  }

  /**
   * Makes these the sums of Σ_p factor_p G_p.
   *
   * @param of made from slopes each
   * @param products factor_p factor_q for each pair p ≥ q
   * @param crossed {@link #squares} of each part and what pairs {@link #crossed}, likewise
   */
  void become(double[] factors, SlopeSums[] of, double[] products, Squares[] crossed) {
    FlatRows[] ofSlopes = new FlatRows[of.length];
    FlatRows[] ofShapes = new FlatRows[of.length];
    for (int p = 0; p < of.length; p++) {
      ofSlopes[p] = of[p].slopes;
      ofShapes[p] = of[p].shapes;
    }
    slopes.become(factors, ofSlopes);
    shapes.become(factors, ofShapes);
    double[][] ofReadings = new double[crossed.length][];
    double[][] ofSides = new double[crossed.length][];
    for (int pair = 0; pair < crossed.length; pair++) {
      ofReadings[pair] = crossed[pair].ofReadings;
      ofSides[pair] = crossed[pair].ofSides;
    }
    Arrays.fill(squares.ofReadings, 0);
    Arrays.fill(squares.ofSides, 0);
    FlatRows.addAll(squares.ofReadings, products, ofReadings);
    FlatRows.addAll(squares.ofSides, products, ofSides);
  }

  Squares squares() {
    return squares;
  }

  /** Sums over rows of GᵀH + HᵀG with the slopes H of another. */
  Squares crossed(SlopeSums other) {
    Squares crossed = Squares.none(count(), squares.ofSides.length > 0);
    int readings = data.residualCount();
    for (int i = 0; i < weighted.count(); i++) {
      weighted.addCross(i, other.weighted, i < readings ? crossed.ofReadings : crossed.ofSides);
    }
    return crossed;
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
      shape = error.fillShares(scales, shares, shape);
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

  /**
   * rᵀΣ⁻¹r of departures r, that of readings times its power, and rᵀr of side evidence [-].
   *
   * @param shares h_k of the scales
   */
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
