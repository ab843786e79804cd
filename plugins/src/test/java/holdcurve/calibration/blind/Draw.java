package holdcurve.calibration.blind;

import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Random numbers in the forms that a generator of cases asks for. */
final class Draw {
  private final RandomGenerator random;

  Draw(long seed) {
    random = new Well19937c(seed);
  }

  double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  double normal(double deviation) {
    return deviation * random.nextGaussian();
  }

  /** A factor about 1 whose logarithm has that standard deviation. */
  double factor(double deviation) {
    return Math.exp(normal(deviation));
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** One of several, each as likely as its weight. */
  int weighted(double... weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    double left = sum * random.nextDouble();
    for (int i = 0; i < weights.length; i++) {
      left -= weights[i];
      if (left < 0) {
        return i;
      }
    }
    return weights.length - 1;
  }
}
