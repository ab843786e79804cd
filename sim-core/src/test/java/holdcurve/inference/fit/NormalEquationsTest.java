package holdcurve.inference.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.inference.data.ReadingSeries;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.noise.Coarsening;
import holdcurve.inference.noise.DiscrepancyBasis;
import holdcurve.inference.noise.ReadingError;
import holdcurve.inference.noise.Scales;
import holdcurve.inference.ranking.InventedJob;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sums against dense matrices of Commons Math: readings linear in x ~ N(0, I) are normal with
 * covariance G Gᵀ + Σ, and x given the readings is normal with the mean of the textbook (Bishop,
 * "Pattern Recognition and Machine Learning" (2006), equations 2.113 to 2.117).
 */
class NormalEquationsTest {
  private static final int COUNT = 5;
  private static final Scales SCALES = new Scales(700, 1200);

  private final JobModel data = JobModel.of(InventedJob.of(), Coarsening.NONE);
  private final Random random = new Random(4);
  private final double[][] sensitivities = drawn(data.residualCount(), 3000);
  private final double[] x = random.doubles(COUNT, -1, 1).toArray();
  private final double[] residuals = column(drawn(data.residualCount(), 2000));

  private double[][] drawn(int rows, double scale) {
    double[][] drawn = new double[rows][COUNT];
    for (double[] row : drawn) {
      for (int j = 0; j < COUNT; j++) {
        row[j] = scale * random.nextGaussian();
      }
    }
    return drawn;
  }

  private static double[] column(double[][] matrix) {
    return new Array2DRowRealMatrix(matrix, false).getColumn(0);
  }

  /** Σ of all tests, written out from what {@link ReadingError} says it is. */
  private RealMatrix scatter() {
    RealMatrix all = MatrixUtils.createRealMatrix(residuals.length, residuals.length);
    int place = 0;
    for (ReadingSeries series : data.series()) {
      double[][] basis = DiscrepancyBasis.at(series.time(), series.pressure());
      RealMatrix shapes = new Array2DRowRealMatrix(basis, false);
      double variance = SCALES.amplitude() * SCALES.amplitude();
      RealMatrix block = shapes.multiply(shapes.transpose()).scalarMultiply(variance);
      for (int i = 0; i < basis.length; i++) {
        double own = SCALES.deviation() * SCALES.deviation() / series.weight()[i];
        block.addToEntry(i, i, own);
      }
      all.setSubMatrix(block.getData(), place, place);
      place += basis.length;
    }
    return all;
  }

  /** Residuals with x at zero, to first order: minus what x adds. */
  private double[] atZero() {
    RealMatrix g = new Array2DRowRealMatrix(sensitivities);
    double[] moved = g.operate(x);
    double[] atZero = residuals.clone();
    for (int i = 0; i < moved.length; i++) {
      atZero[i] -= moved[i];
    }
    return atZero;
  }

  @Test
  void theMarginalIsTheDensityOfTheReadings() {
    RealMatrix g = new Array2DRowRealMatrix(sensitivities);
    RealMatrix covariance = scatter().add(g.multiply(g.transpose()));
    RealVector r = MatrixUtils.createRealVector(atZero());
    LUDecomposition lu = new LUDecomposition(covariance);
    double misfit = r.dotProduct(lu.getSolver().solve(r));
    double logDeterminant = 0;
    for (int i = 0; i < r.getDimension(); i++) {
      logDeterminant += Math.log(Math.abs(lu.getU().getEntry(i, i)));
    }
    double expected = -0.5 * (misfit + logDeterminant + r.getDimension() * Math.log(2 * Math.PI));
    double found =
        new NormalEquations(data, sensitivities).scaled(SCALES).about(x, residuals).logMarginal();
    assertEquals(expected, found, 1e-6);
  }

  /** A Gaussian likelihood at a power has the shape of one with so much more variance. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.25})
  void theMeanIsThatOfTheTextbook(double power) {
    RealMatrix g = new Array2DRowRealMatrix(sensitivities);
    RealMatrix rougher = scatter().scalarMultiply(1 / power);
    RealMatrix byScatter = new LUDecomposition(rougher).getSolver().solve(g).transpose();
    RealMatrix precision = byScatter.multiply(g).add(MatrixUtils.createRealIdentityMatrix(COUNT));
    double[] projected = byScatter.operate(atZero());
    RealVector mean =
        new LUDecomposition(precision).getSolver().solve(MatrixUtils.createRealVector(projected));
    JobModel counting = JobModel.of(data.job(), new Coarsening(power));
    Conditional found =
        new NormalEquations(counting, sensitivities).scaled(SCALES).about(x, residuals);
    for (int j = 0; j < COUNT; j++) {
      assertEquals(-mean.getEntry(j), found.mean()[j], 1e-8);
    }
  }

  @Test
  void whitenedResidualsHaveTheMisfitAsTheirSquare() {
    RealVector r = MatrixUtils.createRealVector(residuals);
    double expected = r.dotProduct(new LUDecomposition(scatter()).getSolver().solve(r));
    double squares = 0;
    for (double row : data.whitened(residuals, SCALES)) {
      squares += row * row;
    }
    assertEquals(expected, squares, 1e-9 * expected);
  }
}
