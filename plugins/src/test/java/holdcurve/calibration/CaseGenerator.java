package holdcurve.calibration;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import holdcurve.circuit.Property;
import holdcurve.flow.FlowLaw;
import holdcurve.flow.OpeningJointLaw;
import holdcurve.flow.PowerLaw;
import holdcurve.hold.HoldSetup;
import holdcurve.hold.HoldSimulator;
import holdcurve.job.GaugeSpec;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.GaugeLog;
import holdcurve.log.Reading;
import holdcurve.model.NetworkAssembler.Detail;
import holdcurve.model.Operation;
import holdcurve.part.CheckValve;
import holdcurve.part.Gauge;
import holdcurve.part.Hose;
import holdcurve.part.Injector;
import holdcurve.part.Regulator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Makes jobs whose physics are not the fitted model's: hoses creep by other time constants, every
 * leak follows a power law of a random exponent, clamps leak, the needle lags and is off by a gain
 * as well as an offset, the fuel drifts in a straight line, and seats close differently each time.
 * Only the circuit file is shared with what is fitted.
 */
final class CaseGenerator {
  private static final double PER_MINUTE = 1e-6 / 60;
  private static final double TEST_PRESSURE = 2e5;

  /** Chance that a generated circuit is sound, as the priors have it. */
  private static final double SOUND = 0.35;

  static final List<String> FAULTS =
      List.of(
          "check-valve-seat",
          "check-valve-seat",
          "injector-tip",
          "regulator-seat",
          "regulator-low-reseat",
          "feed-side-joint",
          "rail-side-joint");

  private final Circuit described;
  private final List<Set<String>> clampings;

  /**
   * @param clampings hoses clamped in each test, the first usually none
   */
  CaseGenerator(Circuit described, List<Set<String>> clampings) {
    this.described = described;
    this.clampings = clampings;
  }

  GeneratedCase generate(long seed) {
    RandomGenerator random = new Well19937c(seed);
    GaugeSpec gauge = new GaugeSpec(4e5, 0.016, random.nextBoolean() ? 2e3 : 5e3);
    Optional<String> fault =
        random.nextDouble() < SOUND
            ? Optional.empty()
            : Optional.of(FAULTS.get(random.nextInt(FAULTS.size())));
    double size = fault.map(id -> size(id, random)).orElse(Double.NaN);
    double exponent = 0.5 + 0.7 * random.nextDouble();
    Circuit truth = truth(random);
    double offset = gauge.accuracyClass() * gauge.range() * (2 * random.nextDouble() - 1) * 0.8;
    double gain = 1 + 0.01 * random.nextGaussian();
    List<HoldTest> tests = new ArrayList<>();
    for (Set<String> clamped : clampings) {
      double varied = size * Math.exp(0.15 * random.nextGaussian());
      Condition condition =
          fault
              .map(id -> leaking(truth, id, varied, exponent))
              .orElseGet(() -> Condition.sound(truth));
      tests.add(test("t" + tests.size(), clamped, condition, gauge, offset, gain, random));
    }
    Job job = new Job("case " + seed, described, gauge, tests, Map.of(), List.of());
    return new GeneratedCase(job, fault, size);
  }

  private static double size(String fault, RandomGenerator random) {
    return fault.equals("regulator-low-reseat")
        ? 0.35e5 * Math.exp(0.45 * random.nextGaussian())
        : 0.4 * PER_MINUTE * Math.exp(0.9 * random.nextGaussian());
  }

  private Circuit truth(RandomGenerator random) {
    double compliance = spread(0.35, random);
    double creep = spread(0.4, random);
    double quick = spread(0.5, random);
    double slow = spread(0.4, random);
    double set = 1 + 0.03 * random.nextGaussian();
    return described.map(
        part -> {
          if (part.kind() == Hose.KIND) {
            Part hose = scaled(part, Hose.COMPLIANCE, compliance);
            hose = scaled(hose, Hose.QUICK_CREEP, creep * spread(0.2, random));
            hose = scaled(hose, Hose.SLOW_CREEP, creep * spread(0.2, random));
            hose = scaled(hose, Hose.QUICK_CREEP_TIME, quick);
            return scaled(hose, Hose.SLOW_CREEP_TIME, slow);
          }
          if (part.kind() == Gauge.KIND) {
            Part tee = scaled(part, Gauge.AIR, spread(0.6, random));
            return scaled(tee, Gauge.LAG, spread(0.8, random));
          }
          if (part.kind() == Regulator.KIND) {
            Part regulator = scaled(part, Regulator.SET, set);
            regulator = scaled(regulator, Regulator.RESEAT_DROP, spread(0.6, random));
            return scaled(regulator, Regulator.WEEP, spread(0.6, random));
          }
          if (part.kind() == CheckValve.KIND) {
            return scaled(part, CheckValve.WEEP, spread(0.6, random));
          }
          return part.kind() == Injector.KIND
              ? scaled(part, Injector.WEEP, spread(0.6, random))
              : part;
        });
  }

  private static double spread(double deviation, RandomGenerator random) {
    return Math.exp(deviation * random.nextGaussian());
  }

  private static Part scaled(Part part, Property property, double factor) {
    return part.with(property, part.value(property) * factor);
  }

  private static Condition leaking(Circuit circuit, String fault, double size, double exponent) {
    Part regulator = circuit.partsOf(Regulator.KIND).get(0);
    if (fault.equals("regulator-low-reseat")) {
      FlowLaw bleed =
          new OpeningJointLaw(
              20 * PER_MINUTE / 1e5, Math.max(0, regulator.value(Regulator.SET) - size), 2e3);
      return Condition.sound(circuit).with(new LeakPath(regulator.from(), regulator.to(), bleed));
    }
    Part valve = circuit.partsOf(CheckValve.KIND).get(0);
    Part injector = circuit.partsOf(Injector.KIND).get(0);
    FlowLaw law = PowerLaw.throughPoint(size, TEST_PRESSURE, exponent, 1e3);
    LeakPath leak =
        switch (fault) {
          case "check-valve-seat" -> new LeakPath(valve.to(), valve.from(), law);
          case "feed-side-joint" -> new LeakPath(valve.to(), Circuit.AIR, law);
          case "injector-tip" -> new LeakPath(injector.from(), Circuit.MANIFOLD, law);
          case "rail-side-joint" -> new LeakPath(injector.from(), Circuit.AIR, law);
          case "regulator-seat" -> new LeakPath(regulator.from(), regulator.to(), law);
          default -> throw new IllegalArgumentException(fault);
        };
    return Condition.sound(circuit).with(leak);
  }

  private HoldTest test(
      String id,
      Set<String> clamped,
      Condition condition,
      GaugeSpec gauge,
      double offset,
      double gain,
      RandomGenerator random) {
    double set = condition.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    double clampTime = 4 + 6 * random.nextDouble();
    double clampLeak = 0.03 * PER_MINUTE * random.nextDouble() / TEST_PRESSURE;
    double prime = 10 + 30 * random.nextDouble();
    HoldSetup setup =
        new HoldSetup(
            set + 3e3 + 3e3 * random.nextDouble(),
            prime,
            0,
            Operation.holding().withMeasuredTemperature(drift(random)),
            clamped,
            clampTime,
            clampLeak,
            0.12e-6 * random.nextDouble());
    double[] times = times(random);
    double[] needle = new HoldSimulator(Detail.FULL, 1e-5).readings(condition, setup, times);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      double eye = 0.3 * gauge.resolution() * random.nextGaussian();
      double seen = gain * needle[i] + offset + eye;
      double read = Math.max(0, Math.rint(seen / gauge.resolution()) * gauge.resolution());
      readings.add(Reading.of(times[i], read));
    }
    HoldTest plain = HoldTest.of(id, clamped, new GaugeLog(id, readings, 0));
    return new HoldTest(
        id,
        clamped,
        Math.rint(clampTime),
        Math.rint(prime),
        plain.fuelTemperature(),
        plain.log(),
        "",
        "");
  }

  /** Fuel that cools or warms in a straight line: not the model's relaxation. */
  private static org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction drift(
      RandomGenerator random) {
    double perSecond = 4e-4 * random.nextGaussian();
    double[] time = {0, 500, 1000, 1500};
    double[] temperature = new double[time.length];
    for (int i = 0; i < time.length; i++) {
      temperature[i] = Operation.ROOM_TEMPERATURE + perSecond * time[i];
    }
    return new org.apache.commons.math3.analysis.interpolation.SplineInterpolator()
        .interpolate(time, temperature);
  }

  private static double[] times(RandomGenerator random) {
    double step = random.nextBoolean() ? 30 : 60;
    int count = (int) (600 / step);
    double[] times = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      times[i] = i * step;
    }
    return times;
  }
}
