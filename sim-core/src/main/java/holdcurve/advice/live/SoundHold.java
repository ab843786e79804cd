package holdcurve.advice.live;

import holdcurve.common.number.Interpolation;
import holdcurve.common.work.ComputationException;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Seats;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Works out what a sound circuit of a description would show, given the first reading of a hold.
 *
 * <p>Ways the circuit may be are drawn from what its description leaves open ({@link
 * PosteriorDraw}). Each is then shifted so that it agrees with the first reading: pressure at the
 * stop, set pressure and gauge error share the difference by their variances, as conditioning a
 * Gaussian does.
 */
public final class SoundHold {
  private static final int WAYS = 80;
  private static final int POINTS = 36;

  /** Leak by which the needle's answer to a leak is measured, at 2 bar [m³/s]. */
  private static final double PROBE = 0.2e-6 / 60;

  private final Circuit circuit;
  private final GaugeSpec gauge;
  private final HoldTest test;
  private final Reading first;
  private final double[] times;
  private final HoldSimulator simulator = new HoldSimulator();
  private final RandomGenerator random;

  private SoundHold(
      Circuit circuit, GaugeSpec gauge, HoldTest test, Reading first, double span, long seed) {
    this.circuit = circuit;
    this.gauge = gauge;
    this.test = test;
    this.first = first;
    this.random = new Well19937c(seed);
    this.times = HoldCurve.times(span, POINTS);
  }

  /**
   * @param test how the hold is done; its first reading after the pump stop counts
   * @param span how far ahead to look [s]
   * @return empty while there is no reading that can be relied on
   * @throws CancellationException if {@code progress} says so
   */
  public static Optional<Expectation> expect(
      Circuit circuit, GaugeSpec gauge, HoldTest test, double span, long seed, Progress progress) {
    return AveragedReadings.first(test.log().hold())
        .flatMap(
            first -> new SoundHold(circuit, gauge, test, first, span, seed).expect(seed, progress));
  }

  private Optional<Expectation> expect(long seed, Progress progress) {
    List<double[]> curves = new ArrayList<>();
    List<double[]> answers = new ArrayList<>();
    double margin = 0;
    int done = 0;
    for (PosteriorDraw way : PosteriorDraw.before(circuit, gauge, seed, WAYS)) {
      if (progress.isCancelled()) {
        throw new CancellationException();
      }
      progress.at((double) done++ / WAYS, "what a sound circuit would show");
      margin += 2 * way.scatter().deviation() / WAYS;
      add(way, curves, answers);
    }
    if (curves.isEmpty()) {
      return Optional.empty();
    }
    HoldCurve band = HoldCurve.of(test.id(), times, curves);
    double[] answer = HoldCurve.of(test.id(), times, answers).middle();
    return Optional.of(new Expectation(band, leastLeaks(band, answer, margin), margin));
  }

  private void add(PosteriorDraw way, List<double[]> curves, List<double[]> answers) {
    Hold hold = way.hold(test, random);
    try {
      double[] at =
          simulator.readings(hold.condition(), hold.setup(), new double[] {0, first.time() + 1e-3});
      Hold agreed = agree(hold, first.pressure() - at[1] - way.scatter().offset());
      double[] needle = simulator.readings(agreed.condition(), agreed.setup(), times);
      double[] leaking = simulator.readings(leak(agreed.condition()), agreed.setup(), times);
      curves.add(read(needle, way.scatter()));
      double[] answer = new double[times.length];
      for (int k = 0; k < answer.length; k++) {
        answer[k] = needle[k] - leaking[k];
      }
      answers.add(answer);
    } catch (ComputationException drawnTooFarOut) {
      return;
    }
  }

  /** Shifts set pressure and pressure at the stop by their shares of what is left unexplained. */
  private Hold agree(Hold hold, double difference) {
    Part regulator = circuit.partsOf(Regulator.KIND).get(0);
    double set = Math.pow(UnknownPriors.usual().setShare() * regulator.value(Regulator.SET), 2);
    double start = Math.pow(UnknownPriors.usual().startDeviation(), 2);
    double offset = gauge.classUncertainty() * gauge.classUncertainty();
    double all = set + start + offset;
    double setNow =
        hold.condition().circuit().part(regulator.id()).value(Regulator.SET)
            + difference * set / all;
    HoldSetup setup = hold.setup();
    HoldSetup shifted =
        new HoldSetup(
            Math.max(1e3, setup.pressure() + difference * (set + start) / all),
            setup.soak(),
            setup.warmth(),
            setup.operation(),
            setup.clamped(),
            setup.clampTime(),
            setup.clampConductance(),
            setup.squeezed());
    Condition condition =
        hold.condition().with(regulator.id(), Regulator.SET, Math.max(1e4, setNow));
    return new Hold(condition, shifted);
  }

  private Condition leak(Condition condition) {
    String point = circuit.partsOf(Gauge.KIND).get(0).from();
    return condition.with(
        new LeakPath(point, Circuit.AIR, LaminarLaw.throughPoint(PROBE, Seats.TEST_PRESSURE)));
  }

  /** The gauge's own error shifts all readings alike, and so no reading against the first. */
  private double[] read(double[] needle, ReadingScatter scatter) {
    double[] read = new double[needle.length];
    double level = Interpolation.at(times, needle, first.time());
    double wander = scatter.modelError() * random.nextGaussian();
    double end = times[times.length - 1];
    for (int k = 0; k < read.length; k++) {
      double fall = needle[k] - level;
      read[k] = Math.max(0, first.pressure() + fall + wander * Math.min(1, times[k] / (0.1 * end)));
    }
    return read;
  }

  private static double[] leastLeaks(HoldCurve band, double[] answer, double margin) {
    double[] least = new double[answer.length];
    for (int k = 0; k < least.length; k++) {
      double needed = band.middle()[k] - band.low()[k] + margin;
      least[k] = answer[k] > 0 ? PROBE * needed / answer[k] : Double.POSITIVE_INFINITY;
    }
    return least;
  }
}
