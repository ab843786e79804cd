package holdcurve.model;

import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Fuel temperature as it was logged: a smooth curve through the readings, held constant outside its
 * knots. Its derivatives are made once, since a simulation asks for them at every stage of every
 * step.
 */
public final class MeasuredTemperature {
  private final double first;
  private final double last;
  private final PolynomialSplineFunction rate;
  private final PolynomialSplineFunction rateOfRate;

  /**
   * @param curve temperature [K] against time [s], once continuously differentiable
   */
  MeasuredTemperature(PolynomialSplineFunction curve) {
    double[] knots = curve.getKnots();
    first = knots[0];
    last = knots[knots.length - 1];
    rate = curve.polynomialSplineDerivative();
    rateOfRate = rate.polynomialSplineDerivative();
  }

  /**
   * @param t time [s]
   * @return first derivative [K/s]
   */
  double rate(double t) {
    return isMeasured(t) ? rate.value(t) : 0;
  }

  /**
   * @param t time [s]
   * @return second derivative [K/s²]
   */
  double rateOfRate(double t) {
    return isMeasured(t) ? rateOfRate.value(t) : 0;
  }

  private boolean isMeasured(double t) {
    return t >= first && t <= last;
  }
}
