package holdcurve.evidence;

import java.util.Arrays;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Nonlinear least squares without a prior, for fits to many digits: Commons Math's
 * Levenberg–Marquardt (QR, scaled by columns) with central differences.
 */
public final class LeastSquares {
  private static final int MOST_STEPS = 2000;

  /** Relative step of central differences, the cube root of the rounding unit [-]. */
  private static final double STEP = 6e-6;

  /** Stands for a residual that overflows, so that such a step is refused. */
  private static final double HUGE = 1e100;

  private final Residuals model;
  private double[] bestParameters;
  private double bestSum = Double.POSITIVE_INFINITY;
  private int evaluations;

  /** Residuals as a function of the parameters, in any common unit. */
  @FunctionalInterface
  public interface Residuals {
    double[] at(double[] parameters);
  }

  /**
   * @param parameters best parameters met, in the caller's units
   * @param standardErrors of the parameters, from s²(JᵀJ)⁻¹; NaN without degrees of freedom or
   *     where the data don't determine them
   * @param sumOfSquares of the residuals
   * @param evaluations residual evaluations spent, differences included [-]
   * @param converged whether the optimiser met its tolerances
   */
  public record Fit(
      double[] parameters,
      double[] standardErrors,
      double sumOfSquares,
      int evaluations,
      boolean converged) {}

  private LeastSquares(Residuals model) {
    this.model = model;
  }

  /**
   * @param model residuals to make small
   * @param start parameters to start from
   */
  public static Fit fit(Residuals model, double[] start) {
    return new LeastSquares(model).run(start);
  }

  private Fit run(double[] start) {
    bestParameters = start.clone();
    int count = residuals(start).length;
    LeastSquaresProblem problem =
        LeastSquaresFactory.create(
            LeastSquaresFactory.model(this::residuals, this::jacobian),
            new ArrayRealVector(count),
            new ArrayRealVector(start),
            null,
            null,
            MOST_STEPS,
            MOST_STEPS,
            true,
            null);
    boolean converged = optimise(problem);
    return new Fit(bestParameters, standardErrors(count), bestSum, evaluations, converged);
  }

  private static boolean optimise(LeastSquaresProblem problem) {
    try {
      new LevenbergMarquardtOptimizer()
          .withCostRelativeTolerance(1e-14)
          .withParameterRelativeTolerance(1e-11)
          .withOrthoTolerance(1e-14)
          .optimize(problem);
      return true;
    } catch (ConvergenceException atRoundingLimit) {
      return true;
    } catch (TooManyEvaluationsException | SingularMatrixException e) {
      return false;
    }
  }

  private double[] residuals(double[] parameters) {
    evaluations++;
    double[] out = model.at(parameters).clone();
    for (int i = 0; i < out.length; i++) {
      out[i] = Double.isFinite(out[i]) && Math.abs(out[i]) < HUGE ? out[i] : HUGE;
    }
    double sum = LogSum.squaredNorm(out);
    if (sum < bestSum) {
      bestSum = sum;
      bestParameters = parameters.clone();
    }
    return out;
  }

  private double[][] jacobian(double[] parameters) {
    double[][] columns = new double[parameters.length][];
    for (int j = 0; j < parameters.length; j++) {
      double step = STEP * Math.max(Math.abs(parameters[j]), 1e-8);
      double[] ahead = parameters.clone();
      double[] behind = parameters.clone();
      ahead[j] += step;
      behind[j] -= step;
      RealVector rise = new ArrayRealVector(model.at(ahead)).subtract(vector(model.at(behind)));
      evaluations += 2;
      columns[j] = rise.map(x -> Double.isFinite(x) ? x : 0).mapDivide(2 * step).toArray();
    }
    return new Array2DRowRealMatrix(columns, false).transpose().getData();
  }

  private static RealVector vector(double[] values) {
    return new ArrayRealVector(values, false);
  }

  /** (JᵀJ)⁻¹ = R⁻¹R⁻ᵀ: its diagonal is the squared row norms of R⁻¹. */
  private double[] standardErrors(int count) {
    int p = bestParameters.length;
    double[] errors = new double[p];
    Arrays.fill(errors, Double.NaN);
    RealMatrix slope = new Array2DRowRealMatrix(jacobian(bestParameters), false);
    if (count <= p || !Double.isFinite(slope.getFrobeniusNorm())) {
      return errors;
    }
    RealMatrix r = new QRDecomposition(slope).getR().getSubMatrix(0, p - 1, 0, p - 1);
    double variance = bestSum / (count - p);
    try {
      RealMatrix inverse = new QRDecomposition(r).getSolver().getInverse();
      for (int i = 0; i < p; i++) {
        errors[i] = Math.sqrt(variance) * inverse.getRowVector(i).getNorm();
      }
    } catch (SingularMatrixException undetermined) {
      return errors;
    }
    return errors;
  }
}
