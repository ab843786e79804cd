package holdcurve.advice.check;

import holdcurve.common.work.ComputationException;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.HoldTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** What the gauge should show in a hold if nothing is wrong, with the range of nine in ten. */
final class ExpectedHold {
  private static final int POINTS = 40;

  private final double[] times;
  private final RandomGenerator random;
  private final HoldSimulator simulator = new HoldSimulator();

  private ExpectedHold(double end, long seed) {
    times = HoldCurve.times(end, POINTS);
    random = new Well19937c(seed);
  }

  /**
   * @param posteriorDraws ways the circuit may be; faults they hold are left out
   * @param test the hold, as it was done
   */
  static HoldCurve of(List<PosteriorDraw> posteriorDraws, HoldTest test, long seed) {
    ExpectedHold expected = new ExpectedHold(test.log().holdSpan(), seed);
    List<double[]> shown = new ArrayList<>();
    posteriorDraws.forEach(way -> expected.shown(way, test).ifPresent(shown::add));
    return HoldCurve.of(test.id(), expected.times, shown);
  }

  /** One hold as it would be read; empty where a circuit drawn far out can't be simulated. */
  private Optional<double[]> shown(PosteriorDraw posteriorDraw, HoldTest test) {
    Hold hold = posteriorDraw.hold(UnaryOperator.identity(), test, member -> false, random);
    try {
      double[] needle = simulator.readings(hold.condition(), hold.setup(), times);
      return Optional.of(read(needle, posteriorDraw.scatter()));
    } catch (ComputationException e) {
      return Optional.empty();
    }
  }

  /** The errors of gauge and model shift the whole curve, the eye's each reading. */
  private double[] read(double[] needle, ReadingScatter scatter) {
    double shift = scatter.offset() + scatter.modelError() * random.nextGaussian();
    double[] read = new double[needle.length];
    for (int i = 0; i < read.length; i++) {
      read[i] = Math.max(0, needle[i] + shift + scatter.deviation() * random.nextGaussian());
    }
    return read;
  }
}
