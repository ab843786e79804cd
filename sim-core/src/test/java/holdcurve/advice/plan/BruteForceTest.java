package holdcurve.advice.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.LeakFault;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/**
 * Expected information in a hold with one or two readings against brute force: thousands of
 * simulated outcomes, each judged by densities from thousands of others. A coarse gauge keeps the
 * densities smooth, so that the brute force needs no kernels of its own but the reading error.
 */
class BruteForceTest {
  private static final GaugeSpec COARSE = new GaugeSpec(4e5, 0.016, 1e4);
  private static final int MANY = 1500;
  private static final double[] PRIOR = {0.5, 0.5};

  private final Circuit circuit = InventedJob.of().circuit();
  private final LeakFault drip = new InventedJob.Drip();
  private final List<Hypothesis> hypotheses =
      List.of(
          new Hypothesis(List.of(), 1),
          new Hypothesis(List.of(new Hypothesis.Member(drip, drip.sites(circuit).get(0))), 1));

  private double[][] readings(int h, double[] times, long seed, int count) {
    HoldTest test = HoldTest.of("next", Set.of(), new GaugeLog("none", List.of(), 0));
    HoldSimulator simulator = new HoldSimulator();
    List<double[]> rows = new ArrayList<>();
    for (PosteriorDraw one :
        PosteriorDraw.before(circuit, COARSE, hypotheses.get(h), seed, count)) {
      Hold hold = one.hold(test, new Well19937c(seed + rows.size()));
      double[] row = simulator.readings(hold.condition(), hold.setup(), times);
      for (int k = 0; k < row.length; k++) {
        row[k] += one.scatter().offset();
      }
      rows.add(row);
    }
    return rows.toArray(double[][]::new);
  }

  /** Readings scatter independently here. */
  private static double[][] covariance(double deviation, int n) {
    return new ReadingScatter(0, deviation, 0).covariance(new double[n]);
  }

  private static double density(double[] y, double[][] places, double deviation) {
    double sum = 0;
    for (double[] place : places) {
      double distance = 0;
      for (int k = 0; k < y.length; k++) {
        distance += Math.pow((y[k] - place[k]) / deviation, 2);
      }
      sum += Math.exp(-distance / 2);
    }
    return sum / places.length;
  }

  /**
   * Mean of log₂ p(h|y)/p(h) over simulated outcomes, with its standard error.
   *
   * @param judged deviation that a likelihood takes readings to have [Pa]
   */
  private double[] bruteForce(double[] times, double deviation, double judged) {
    double[][][] judges = {readings(0, times, 11, MANY), readings(1, times, 12, MANY)};
    Well19937c random = new Well19937c(5);
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (int h = 0; h < 2; h++) {
      for (double[] place : readings(h, times, 21 + h, MANY)) {
        double[] y = place.clone();
        for (int k = 0; k < y.length; k++) {
          y[k] += deviation * random.nextGaussian();
        }
        double own = density(y, judges[h], judged);
        double other = density(y, judges[1 - h], judged);
        double bits = own + other > 0 ? Math.log(2 * own / (own + other)) / Math.log(2) : 0;
        sum += Math.max(-20, bits);
        squares += bits * bits;
        count++;
      }
    }
    double mean = sum / count;
    return new double[] {mean, Math.sqrt((squares / count - mean * mean) / count)};
  }

  /**
   * @param power at which readings count [-]
   */
  private void agrees(double power, double... times) {
    double deviation = 5e3;
    double judged = deviation / Math.sqrt(power);
    double[] brute = bruteForce(times, deviation, judged);
    double[][][] few = {readings(0, times, 1, 60), readings(1, times, 2, 60)};
    Information found =
        new ReadingOutcomes(
                PRIOR,
                few,
                covariance(deviation, times.length),
                covariance(judged, times.length),
                1)
            .information();
    String said = found + ", brute force " + brute[0] + " ± " + brute[1];
    assertTrue(brute[0] > 0.2 && brute[0] < 0.95, said);
    assertEquals(brute[0], found.bits(), 2 * Math.hypot(found.error(), brute[1]), said);
    assertTrue(found.error() < 0.12, said);
  }

  @Test
  void oneReading() {
    agrees(1, 600);
  }

  @Test
  void twoReadings() {
    agrees(1, 120, 600);
  }

  @Test
  void readingsAtAThirdOfTheirPower() {
    agrees(1.0 / 3, 120, 600);
  }
}
