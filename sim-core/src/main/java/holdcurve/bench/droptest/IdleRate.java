package holdcurve.bench.droptest;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * How fast the gauge falls while nothing is fired.
 *
 * @param rate [Pa/s]
 * @param error standard uncertainty, from rounding [Pa/s]
 */
record IdleRate(double rate, double error) {
  static IdleRate of(DropTest test) {
    double time = test.idleFalls().stream().mapToDouble(IdleFall::time).sum();
    if (time == 0) {
      return new IdleRate(0, 0);
    }
    double fall = test.idleFalls().stream().mapToDouble(f -> f.before() - f.after()).sum();
    double rounding = test.resolution() * Math.sqrt(test.idleFalls().size() / 6.0);
    return new IdleRate(Math.max(0, fall / time), rounding / time);
  }

  double draw(RandomGenerator random) {
    return Math.max(0, rate + error * random.nextGaussian());
  }
}
