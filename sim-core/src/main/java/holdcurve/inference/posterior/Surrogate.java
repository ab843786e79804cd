package holdcurve.inference.posterior;

import holdcurve.common.input.Cancellation;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.FlatRows;
import holdcurve.inference.fit.NormalEquations;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Residuals of all readings, and how they depend on the conditional coordinates, as both change
 * with the sampled ones: known at a fit and at a pair of places on either side along each axis of
 * the posterior there, the conditional ones moving along as expected.
 *
 * <p>Between those places sensitivities lie on straight lines, since they change little over a
 * posterior and cost ten times a curve. Residuals, known there with their derivatives, follow a
 * polynomial of the fifth degree along each axis, of the third across. So curves are predicted
 * without a simulation.
 */
final class Surrogate {
  /** Beyond this many standard deviations polynomials go on as straight lines [-]. */
  private static final double BENT = 1.5;

  /**
   * Beyond this many sensitivities no longer change; with half as many, ranges came out too narrow
   * [-].
   */
  private static final double TILTED = 3;

  /** Powers of a step along one axis. */
  private static final int POWERS = 5;

  /** Terms across two axes. */
  private static final int CROSSED = 3;

  private final JobModel data;
  private final HypothesisModel model;
  private final double[] centre;
  private final HypothesisModel.Linear linear;
  private final int[] moving;
  private final int[] conditional;
  private final int[] curve;
  private final int[] columns;
  private final RealMatrix axes;
  private final RealMatrix ridge;
  private final double[][] base;

  /** Sensitivities at any steps; null before the first question. */
  private NormalEquationFamily family;

  /** What residuals are a sum of, each in proportion to one of {@link #weights}. */
  private double[][] terms;

  /**
   * @param moving sampled coordinates that change the curve
   * @param covariance posterior covariance of those [-]
   * @param ridge how the conditional coordinates move with those
   */
  Surrogate(
      JobModel data,
      HypothesisModel model,
      Fit fit,
      int[] moving,
      RealMatrix covariance,
      RealMatrix ridge) {
    this.data = data;
    this.model = model;
    this.moving = moving;
    this.ridge = ridge;
    linear = fit.linear();
    Latents latents = model.latentMap().latents();
    centre = fit.u();
    conditional = latents.conditional();
    curve = latents.curve();
    columns =
        IntStream.range(0, curve.length)
            .filter(k -> Arrays.binarySearch(conditional, curve[k]) >= 0)
            .toArray();
    base = conditionalColumns(linear);
    axes = new CholeskyDecomposition(covariance).getL();
  }

  private double[][] conditionalColumns(HypothesisModel.Linear of) {
    return Arrays.stream(of.sensitivities())
        .map(row -> Arrays.stream(columns).mapToDouble(c -> row[c]).toArray())
        .toArray(double[][]::new);
  }

  /** Axis k of the posterior. */
  private final class Axis {
    /** Change of the sensitivities a step along the axis. */
    final double[][] change;

    /** Coefficients of the first to fifth power of the steps, one row a power. */
    final double[][] powers;

    /** Change of the derivative along each axis with the steps, and with half their square. */
    final double[][][] across;

    Axis(int k) {
      double[] step = direction(k);
      HypothesisModel.Linear up = linear(step, 1);
      HypothesisModel.Linear down = linear(step, -1);
      change = conditionalColumns(up);
      double[][] below = conditionalColumns(down);
      double span = (up == linear ? 0 : 1) + (down == linear ? 0 : 1);
      for (int i = 0; i < change.length; i++) {
        for (int c = 0; c < columns.length; c++) {
          change[i][c] = (change[i][c] - below[i][c]) / Math.max(1, span);
        }
      }
      powers = new double[POWERS][change.length];
      across = new double[moving.length][][];
      double[] here = derivative(linear, step);
      double[] above = derivative(up, step);
      double[] beneath = derivative(down, step);
      for (int i = 0; i < change.length; i++) {
        double rise = up == linear ? here[i] : up.residuals()[i] - linear.residuals()[i];
        double fall = down == linear ? here[i] : linear.residuals()[i] - down.residuals()[i];
        double[] quintic = quintic(rise, fall, beneath[i], here[i], above[i]);
        for (int p = 0; p < POWERS; p++) {
          powers[p][i] = quintic[p];
        }
      }
      for (int l = 0; l < moving.length; l++) {
        across[l] = l == k ? null : across(up, down, direction(l));
      }
    }

    private double[][] across(
        HypothesisModel.Linear up, HypothesisModel.Linear down, double[] step) {
      double[] here = derivative(linear, step);
      double[] above = derivative(up, step);
      double[] beneath = derivative(down, step);
      double[][] across = new double[2][here.length];
      for (int i = 0; i < here.length; i++) {
        across[0][i] = (above[i] - beneath[i]) / 2;
        across[1][i] = (above[i] + beneath[i]) / 2 - here[i];
      }
      return across;
    }
  }

  /**
   * Coefficients of the polynomial through 0 at 0.
   *
   * @param rise from 0 to 1
   * @param fall from −1 to 0, positive where it rises
   * @param before derivative at −1
   * @param here at 0
   * @param after at 1
   */
  private static double[] quintic(
      double rise, double fall, double before, double here, double after) {
    double even = (rise - fall) / 2;
    double evenSlope = (after - before) / 2;
    double odd = (rise + fall) / 2 - here;
    double oddSlope = (after + before) / 2 - here;
    return new double[] {
      here,
      (4 * even - evenSlope) / 2,
      (5 * odd - oddSlope) / 2,
      (evenSlope - 2 * even) / 2,
      (oddSlope - 3 * odd) / 2
    };
  }

  /** A step along axis k, over all curve coordinates. */
  private double[] direction(int k) {
    double[] step = axes.getColumn(k);
    double[] with = ridge.operate(step);
    double[] all = new double[curve.length];
    for (int j = 0; j < moving.length; j++) {
      all[Arrays.binarySearch(curve, moving[j])] = step[j];
    }
    for (int c = 0; c < columns.length; c++) {
      all[columns[c]] = with[c];
    }
    return all;
  }

  private static double[] derivative(HypothesisModel.Linear of, double[] step) {
    return Arrays.stream(of.sensitivities())
        .mapToDouble(
            row -> {
              double sum = 0;
              for (int j = 0; j < step.length; j++) {
                sum += row[j] * step[j];
              }
              return sum;
            })
        .toArray();
  }

  /** Residuals and sensitivities a step away; where the model fails there, those at the centre. */
  private HypothesisModel.Linear linear(double[] step, double sign) {
    double[] u = centre.clone();
    for (int j = 0; j < curve.length; j++) {
      u[curve[j]] += sign * step[j];
    }
    HypothesisModel.Linear there = model.linear(u, curve);
    return there == null ? linear : there;
  }

  private NormalEquationFamily family() {
    if (family == null) {
      Axis[] along = IntStream.range(0, moving.length).mapToObj(Axis::new).toArray(Axis[]::new);
      family =
          new NormalEquationFamily(
              data, base, Arrays.stream(along).map(a -> a.change).toArray(double[][][]::new));
      terms = terms(along);
    }
    return family;
  }

  /** Each axis knows how the derivative along the other changes: the mixed term from both. */
  private static double[][] terms(Axis[] along) {
    List<double[]> terms = new ArrayList<>();
    for (int k = 0; k < along.length; k++) {
      terms.addAll(List.of(along[k].powers));
      for (int l = 0; l < k; l++) {
        double[][] kl = along[k].across[l];
        double[][] lk = along[l].across[k];
        double[] mixed = new double[kl[0].length];
        Arrays.setAll(mixed, i -> (kl[0][i] + lk[0][i]) / 2);
        terms.addAll(List.of(mixed, kl[1], lk[1]));
      }
    }
    return terms.toArray(double[][]::new);
  }

  /** What each of {@link #terms} counts; powers go straight on where they aren't to be trusted. */
  private static double[] weights(double[] steps) {
    double[] weights =
        new double[steps.length * POWERS + steps.length * (steps.length - 1) / 2 * CROSSED];
    int next = 0;
    for (int k = 0; k < steps.length; k++) {
      double x = clamped(steps[k], BENT);
      double power = 1;
      for (int p = 1; p <= POWERS; p++) {
        weights[next++] = power * (x + p * (steps[k] - x));
        power *= x;
      }
      for (int l = 0; l < k; l++) {
        double y = clamped(steps[l], BENT);
        weights[next++] = x * y;
        weights[next++] = x * y * x;
        weights[next++] = x * y * y;
      }
    }
    return weights;
  }

  /**
   * Curves about one place.
   *
   * @param residuals predicted there
   * @param sensitivities their derivatives by the conditional coordinates, good until the next
   *     question
   */
  record Foreseen(double[] residuals, NormalEquations sensitivities) {}

  /** What is predicted at {@code u}. */
  Foreseen at(double[] u) {
    Cancellation.check();
    double[] steps = steps(u);
    if (family == null && Arrays.stream(steps).allMatch(step -> step == 0)) {
      return atCentre(u);
    }
    NormalEquations sensitivities = sensitivities(steps);
    double[] residuals = linear.residuals().clone();
    sensitivities.addProducts(beside(u), residuals);
    FlatRows.addAll(residuals, weights(steps), terms);
    return new Foreseen(residuals, sensitivities);
  }

  /** The same as from the axes, without asking what they cost. */
  private Foreseen atCentre(double[] u) {
    NormalEquations sensitivities = new NormalEquations(data, base);
    double[] residuals = linear.residuals().clone();
    sensitivities.addProducts(beside(u), residuals);
    return new Foreseen(residuals, sensitivities);
  }

  private NormalEquations sensitivities(double[] steps) {
    return family().at(Arrays.stream(steps).map(step -> clamped(step, TILTED)).toArray());
  }

  private static double clamped(double step, double farthest) {
    return Math.max(-farthest, Math.min(farthest, step));
  }

  /** How far the conditional coordinates lie from where they are expected. */
  private double[] beside(double[] u) {
    double[] away = new double[moving.length];
    for (int j = 0; j < away.length; j++) {
      away[j] = u[moving[j]] - centre[moving[j]];
    }
    double[] with = ridge.operate(away);
    double[] beside = new double[conditional.length];
    for (int c = 0; c < beside.length; c++) {
      beside[c] = u[conditional[c]] - centre[conditional[c]] - with[c];
    }
    return beside;
  }

  /** Residual from the centre in steps along the axes: axes · steps = residual. */
  private double[] steps(double[] u) {
    double[] steps = new double[moving.length];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = u[moving[i]] - centre[moving[i]];
      for (int k = 0; k < i; k++) {
        steps[i] -= axes.getEntry(i, k) * steps[k];
      }
      steps[i] /= axes.getEntry(i, i);
    }
    return steps;
  }
}
