package holdcurve.advice.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Expected information against values that are known otherwise. */
class InformationTest {
  private static final double[] EVEN = {0.5, 0.5};

  private static double[][][] clouds(double[] means, double spread, int draws) {
    Well19937c random = new Well19937c(3);
    double[][][] clouds = new double[means.length][draws][];
    for (int h = 0; h < means.length; h++) {
      for (int i = 0; i < draws; i++) {
        double at = means[h] + spread * random.nextGaussian();
        clouds[h][i] = new double[] {at, 0.5 * at, 0};
      }
    }
    return clouds;
  }

  private static double[][] unit(int n) {
    double[][] unit = new double[n][n];
    for (int i = 0; i < n; i++) {
      unit[i][i] = 1;
    }
    return unit;
  }

  /**
   * Cover and Thomas, "Elements of Information Theory", 2nd ed. 2006, section 7.1.4: a binary
   * symmetric channel with equal inputs passes 1 − H(ε) bits.
   */
  @Test
  void binarySymmetricChannel() {
    double[][][] chance = {{{0.9, 0.1}}, {{0.1, 0.9}}};
    double known = 1 + 0.9 * Math.log(0.9) / Math.log(2) + 0.1 * Math.log(0.1) / Math.log(2);
    assertEquals(known, new SortedOutcomes(EVEN, chance).information().bits(), 1e-12);
  }

  /**
   * Two Gaussians of unit variance at ±1: I = 1 − E[log₂(1 + e^(−2Y))], Y ~ N(1, 1), by the
   * trapezium rule here. Readings (y, y/2) about (m, m/2) amount to one at ±√1.25 m.
   */
  @Test
  void twoGaussians() {
    double apart = Math.sqrt(1.25);
    double loss = 0;
    double step = 1e-3;
    for (double z = -8; z <= 8; z += step) {
      double weight = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * step;
      loss += weight * Math.log1p(Math.exp(-2 * apart * (apart + z))) / Math.log(2);
    }
    Information found =
        new ReadingOutcomes(EVEN, clouds(new double[] {1, -1}, 0, 400), unit(3), unit(3), 1)
            .information();
    assertEquals(1 - loss, found.bits(), 3 * found.error());
    assertTrue(found.error() < 0.05, found.toString());
  }

  @Test
  void clearlyApartTellsAll() {
    double[] prior = {0.5, 0.25, 0.25};
    double[][][] far = clouds(new double[] {0, 40, -40}, 1, 60);
    Information found = new ReadingOutcomes(prior, far, unit(3), unit(3), 1).information();
    assertEquals(Information.entropy(prior), found.bits(), 0.02);
  }

  @Test
  void alikeTellsNothing() {
    double[] prior = new double[8];
    Arrays.fill(prior, 1.0 / 8);
    double[][][] alike = clouds(new double[8], 5, 60);
    Information found = new ReadingOutcomes(prior, alike, unit(3), unit(3), 1).information();
    assertEquals(0, found.bits(), 0.03);
    assertTrue(found.error() < 0.06, found.toString());
  }
}
