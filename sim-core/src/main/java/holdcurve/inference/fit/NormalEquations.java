package holdcurve.inference.fit;

import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.noise.ReadingError;
import holdcurve.inference.noise.Scales;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sums over the rows of a job in which curves are linear in some coordinates x. They hold all that
 * the precision of x needs, whatever the scales: in the notation of {@link ReadingError}, each test
 * adds (1/σ²) (GᵀWG − Σ_k h_k T_kᵀT_k), with sensitivities G, T_k = s_kᵀ W^½ G and h_k = a/(1 + a
 * g_k). Side evidence adds its rows as they are.
 */
final class NormalEquations {
  private final JobModel data;
  private final FlatRows sensitivities;

  private final Squares squares;

  /** T_k, test after test. */
  private final FlatRows shapes;

  /**
   * Sums of products of sensitivities over rows, lower triangles row after row.
   *
   * @param ofReadings over rows of readings, weighted
   * @param ofSides over those of side evidence; empty where there are none
   */
  private record Squares(double[] ofReadings, double[] ofSides) {
    static Squares none(int count, boolean sides) {
      int size = count * (count + 1) / 2;
      return new Squares(new double[size], new double[sides ? size : 0]);
    }
  }

  /**
   * What residuals r say of x, whatever the scales.
   *
   * @param ofReadings GᵀWr
   * @param ofSides Gᵀr over rows of side evidence
   * @param along s_kᵀ W^½ r, test after test
   * @param squares rᵀWr
   * @param sideSquares rᵀr over rows of side evidence
   */
  record Projected(
      double[] ofReadings, double[] ofSides, double[] along, double squares, double sideSquares) {}

  /**
   * @param data readings of the job
   * @param sensitivities one row a reading [Pa], then those of side evidence [-]; one column a
   *     coordinate
   */
  NormalEquations(JobModel data, double[][] sensitivities) {
    this.data = data;
    int columns = sensitivities[0].length;
    this.sensitivities = FlatRows.of(List.of(sensitivities), columns);
    double[][] weighted = weighted(data, sensitivities);
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
  private static double[][] weighted(JobModel data, double[][] sensitivities) {
    double[][] rows = new double[sensitivities.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = sensitivities[i].clone();
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

  int count() {
    return sensitivities.columns();
  }

  /**
   * @param residuals reading minus curve [Pa], then residuals of side evidence [-]
   */
  Projected projected(double[] residuals) {
    double[] along = new double[shapes.count()];
    double[] ofReadings = new double[count()];
    double squares = 0;
    int shape = 0;
    int place = 0;
    for (ReadingError error : data.errors()) {
      double[] weighted = error.weighted(residuals, place);
      for (int k = 0; k < error.shapeCount(); k++) {
        along[shape++] = error.along(k, weighted);
      }
      for (double r : weighted) {
        squares += r * r;
      }
      sensitivities.addSum(error.weighted(weighted, 0), place, place + weighted.length, ofReadings);
      place += weighted.length;
    }
    double[] sides = Arrays.copyOfRange(residuals, place, residuals.length);
    double[] ofSides = new double[count()];
    sensitivities.addSum(sides, place, residuals.length, ofSides);
    double sideSquares = 0;
    for (double r : sides) {
      sideSquares += r * r;
    }
    return new Projected(ofReadings, ofSides, along, squares, sideSquares);
  }

  /** The posterior precision of the coordinates, I + GᵀΣ⁻¹G, with these scales. */
  LinearGaussianProblem scaled(Scales scales) {
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
    return new LinearGaussianProblem(this, scales, shares, precision);
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
  void addGradient(Projected projected, Scales scales, double[] shares, double[] gradient) {
    double perVariance = perVariance(scales);
    double[] factors = new double[shares.length];
    for (int k = 0; k < shares.length; k++) {
      factors[k] = -perVariance * shares[k] * projected.along[k];
    }
    shapes.addSum(factors, 0, factors.length, gradient);
    for (int j = 0; j < gradient.length; j++) {
      gradient[j] += perVariance * projected.ofReadings[j] + projected.ofSides[j];
    }
  }

  /**
   * rᵀΣ⁻¹r of residuals r, that of readings times its power, and rᵀr of side evidence [-].
   *
   * @param shares h_k of the scales
   */
  double misfit(Projected projected, Scales scales, double[] shares) {
    double sum = projected.squares;
    for (int k = 0; k < shares.length; k++) {
      sum -= shares[k] * projected.along[k] * projected.along[k];
    }
    return perVariance(scales) * sum + projected.sideSquares;
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
