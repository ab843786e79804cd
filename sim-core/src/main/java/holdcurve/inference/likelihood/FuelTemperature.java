package holdcurve.inference.likelihood;

import holdcurve.inference.prior.PriorFile;
import holdcurve.physics.network.TemperatureCourse;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is known of the course of the fuel temperature in one hold before the gauge is looked at. A
 * thermometer is an instrument: it is off by a constant, is read in steps, and sits at one place of
 * the circuit, where it follows a course of its own beside that of the trapped fuel. So a column of
 * temperatures narrows the course and doesn't replace it; where it has gaps, there is less of it.
 *
 * <p>With amplitudes c ~ N(0, S) of the shapes φ, readings y = b + φᵀ(c + e) + noise, offset b and
 * amplitudes e ~ N(0, D) of the place, c given y is Gaussian.
 */
final class FuelTemperature {
  private static final PriorFile PRIORS = PriorFile.section("temperature");

  /** Standard deviation of the amplitudes of the shapes without a thermometer [K]. */
  private static final double[] SPREAD = {
    PRIORS.value("first_shape_k"), PRIORS.value("second_shape_k"), PRIORS.value("third_shape_k")
  };

  private static final double PLACE = PRIORS.value("place_k");
  private static final double PLACE_SHARE = PRIORS.value("place_share");
  private static final double OFFSET = PRIORS.value("offset_k");
  private static final double LEAST_STEP = PRIORS.value("least_step_k");

  /** Readings of a thermometer that are used. */
  private static final int MOST = 30;

  private final double[] mean;
  private final double[][] factor;

  private FuelTemperature(double[] mean, double[][] factor) {
    this.mean = mean;
    this.factor = factor;
  }

  static FuelTemperature of(HoldTest test) {
    List<Reading> measured =
        thinned(test.log().hold().stream().filter(Reading::hasTemperature).toList());
    RealMatrix spread = squared(SPREAD);
    if (measured.size() < 2) {
      return new FuelTemperature(new double[SPREAD.length], lower(spread));
    }
    int n = measured.size();
    double first = measured.get(0).fuelTemperature();
    double moved = 0;
    double[][] shapes = new double[n][];
    double[] read = new double[n];
    for (int i = 0; i < n; i++) {
      shapes[i] = TemperatureCourse.shapes(measured.get(i).time());
      read[i] = measured.get(i).fuelTemperature() - first;
      moved = Math.max(moved, Math.abs(read[i]));
    }
    double place = Math.hypot(PLACE, PLACE_SHARE * moved);
    double[] placed = new double[SPREAD.length];
    for (int k = 0; k < placed.length; k++) {
      placed[k] = place * SPREAD[k] / SPREAD[1];
    }
    RealMatrix phi = new Array2DRowRealMatrix(shapes, false);
    RealMatrix covariance = phi.multiply(spread.add(squared(placed))).multiply(phi.transpose());
    double step = Math.max(LEAST_STEP, step(read));
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance.addToEntry(i, j, OFFSET * OFFSET + step * step / 12 * (i == j ? 2 : 1));
      }
    }
    RealMatrix gain =
        new CholeskyDecomposition(covariance).getSolver().solve(phi.multiply(spread)).transpose();
    RealVector mean = gain.operate(new ArrayRealVector(read, false));
    RealMatrix left = spread.subtract(gain.multiply(phi.multiply(spread)));
    return new FuelTemperature(mean.toArray(), lower(left));
  }

  /** At most {@value #MOST} readings, evenly spread: temperatures change slowly. */
  private static List<Reading> thinned(List<Reading> measured) {
    int every = Math.max(1, (measured.size() + MOST - 1) / MOST);
    return IntStream.range(0, measured.size())
        .filter(i -> i % every == 0)
        .mapToObj(measured::get)
        .toList();
  }

  /** Smallest step between two readings that differ [K]. */
  private static double step(double[] read) {
    double step = Double.POSITIVE_INFINITY;
    for (int i = 1; i < read.length; i++) {
      double apart = Math.abs(read[i] - read[i - 1]);
      step = apart > 1e-6 ? Math.min(step, apart) : step;
    }
    return step < Double.POSITIVE_INFINITY ? Math.min(step, 1) : 0;
  }

  private static RealMatrix squared(double[] deviations) {
    double[] squares = new double[deviations.length];
    for (int k = 0; k < squares.length; k++) {
      squares[k] = deviations[k] * deviations[k];
    }
    return new Array2DRowRealMatrix(new DiagonalMatrix(squares).getData(), false);
  }

  private static double[][] lower(RealMatrix covariance) {
    RealMatrix even = covariance.add(covariance.transpose()).scalarMultiply(0.5);
    return new CholeskyDecomposition(even, 1e-9, 1e-12).getL().getData();
  }

  /**
   * @param z standard-normal coordinates, one a shape [-]
   */
  TemperatureCourse at(double[] z) {
    double[] c = mean.clone();
    for (int k = 0; k < c.length; k++) {
      for (int j = 0; j <= k; j++) {
        c[k] += factor[k][j] * z[j];
      }
    }
    return new TemperatureCourse(c[0], c[1], c[2]);
  }
}
