package holdcurve.training;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.Observations;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Regulator;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.EyeReadings;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * The car of an exercise as it really is: it answers whatever is done to it. The same step at the
 * same place in a session gives the same answer.
 */
public final class TrainingCar {
  /** What the pump's flow lifts the regulator above its set pressure: assumed [Pa]. */
  private static final double OVERPRESSURE = Unit.BAR.toSi(0.05);

  private static final double CLAMP_TIME = 6;
  static final double PRIME_TIME = 20;

  /** What a clamp in good order lets past, at most: assumed [m³/(s·Pa)]. */
  private static final double CLAMP_LEAK = 2e-16;

  /** Standard deviation of a leak's size from one hold to the next: assumed [-]. */
  private static final double MOOD = 0.08;

  /** Standard deviation of the fuel's warmth over its surroundings: assumed [K]. */
  private static final double WARMTH = 0.7;

  private final Exercise exercise;
  private final List<Placed> placed = new ArrayList<>();
  private final Circuit circuit;
  private final double gaugeOffset;

  private record Placed(LeakFault fault, Site site, double[] values) {
    Condition apply(Condition condition, double mood) {
      double[] moody = values.clone();
      if (fault.parameters().get(0).variesBetweenTests()) {
        moody[0] *= mood;
      }
      return fault.apply(condition, site, moody);
    }
  }

  /**
   * @throws InputException if the secret names a fault or a site that isn't there, or a size that
   *     is beyond anything met with
   */
  public TrainingCar(Exercise exercise, FaultCatalogue catalogue) {
    this.exercise = exercise;
    this.circuit = CarVariation.of(exercise.circuit(), exercise.secret().seed());
    for (HiddenFault hidden : exercise.secret().faults()) {
      placed.add(placed(hidden, catalogue));
    }
    RandomGenerator random = random(-1);
    double limit = exercise.gauge().accuracyClass() * exercise.gauge().range();
    this.gaugeOffset = limit * (2 * random.nextDouble() - 1);
  }

  /**
   * Looks an exercise over before it is handed out.
   *
   * @throws InputException as the constructor
   */
  public static void requirePlausible(Exercise exercise, FaultCatalogue catalogue) {
    new TrainingCar(exercise, catalogue);
  }

  private Placed placed(HiddenFault hidden, FaultCatalogue catalogue) {
    LeakFault fault =
        catalogue
            .byId(hidden.fault())
            .orElseThrow(
                () ->
                    wrong(
                        "there is no fault '" + hidden.fault() + "'",
                        "name a fault as 'holdcurve faults' lists it"));
    List<Site> sites = fault.sites(circuit);
    Site site =
        sites.stream()
            .filter(s -> hidden.site().isEmpty() || s.id().equals(hidden.site()))
            .findFirst()
            .orElseThrow(
                () ->
                    wrong(
                        "'" + hidden.fault() + "' has no site '" + hidden.site() + "' here",
                        sites.isEmpty()
                            ? "hide another fault"
                            : "name one of " + sites.stream().map(Site::id).toList()));
    double[] values = FaultParameter.usual(fault.parameters());
    if (!Double.isNaN(hidden.size())) {
      values[0] = size(hidden, new PlausibleSize(fault.parameters().get(0)));
    }
    return new Placed(fault, site, values);
  }

  private double size(HiddenFault hidden, PlausibleSize plausible) {
    if (!plausible.holds(hidden.size())) {
      throw wrong(
          String.format(
              Locale.ROOT,
              "size %.3g of '%s' is beyond anything met with",
              hidden.size(),
              hidden.fault()),
          "give " + plausible.inSi() + " in SI, which is " + plausible.inUnit());
    }
    return hidden.size();
  }

  private InputException wrong(String what, String remedy) {
    return InputException.at(exercise.title(), "hidden fault", what, remedy);
  }

  /** The id of what is wrong, as a ranking writes it. */
  public String truth() {
    return PossibleAnswers.join(
        placed.stream().map(p -> p.fault().id() + "@" + p.site().id()).toList());
  }

  /**
   * Where the needle stands, its lag and the gauge's own error included [Pa gauge].
   *
   * @param times since the pump stop [s], ascending
   * @param place of the step in the session
   */
  public double[] needle(Step.Hold hold, int place, double[] times) {
    RandomGenerator random = random(place);
    double set = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    Set<String> clamped = new LinkedHashSet<>(hold.clamped());
    HoldSetup setup =
        new HoldSetup(
            set + OVERPRESSURE,
            PRIME_TIME,
            WARMTH * random.nextGaussian(),
            Operation.holding(),
            clamped,
            CLAMP_TIME,
            CLAMP_LEAK * random.nextDouble(),
            0);
    Condition condition = condition(random);
    double[] needle = new HoldSimulator(Detail.FULL, 1e-6).readings(condition, setup, times);
    return DoubleStream.of(needle).map(p -> Math.max(0, p + gaugeOffset)).toArray();
  }

  private Condition condition(RandomGenerator random) {
    Condition condition = Condition.sound(circuit);
    for (Placed one : placed) {
      condition = one.apply(condition, Math.exp(MOOD * random.nextGaussian()));
    }
    return condition;
  }

  /** The hold as it goes into the job, read by eye. */
  public HoldTest hold(Step.Hold hold, int place) {
    double[] times = readingTimes(hold.watched());
    double[] read =
        EyeReadings.of(needle(hold, place, times), exercise.gauge(), 0, random(place + 1000));
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      readings.add(Reading.of(times[i], read[i]));
    }
    return new HoldTest(
        (place + 1) + ". " + hold.words(),
        Set.copyOf(hold.clamped()),
        CLAMP_TIME,
        PRIME_TIME,
        OptionalDouble.empty(),
        new GaugeLog("exercise", readings, 0),
        "",
        "");
  }

  /**
   * When a hold is usually read: every quarter of a minute at first, then every minute [s].
   *
   * @param minutes for which it is watched
   */
  public static double[] readingTimes(double minutes) {
    return DoubleStream.concat(
            DoubleStream.of(0, 15, 30, 45),
            DoubleStream.iterate(60, t -> t <= minutes * 60 + 1e-9, t -> t + 60))
        .toArray();
  }

  /** What is seen or counted at a step that isn't a hold. */
  public List<Finding> find(Step step, int place) {
    RandomGenerator random = random(place);
    double pressure = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    Observations sightings = new Observations(circuit, sources());
    if (step instanceof Step.CountDrops count) {
      double seconds = 60 * count.counted();
      return List.of(sightings.countDrops(count.part(), seconds, pressure, random));
    }
    if (step instanceof Step.LookAtJoints) {
      return sightings.look(pressure, random);
    }
    return step instanceof Step.LookIntoReferenceHose
        ? List.of(sightings.lookIntoReferenceHose(pressure, random))
        : List.of();
  }

  private List<Observations.Source> sources() {
    RandomGenerator random = random(-2);
    List<Observations.Source> sources = new ArrayList<>();
    for (Placed one : placed) {
      List<LeakPath> leaks = one.apply(Condition.sound(circuit), 1).leaks();
      List<String> parts = one.site().parts();
      String wet = parts.isEmpty() ? "" : parts.get(random.nextInt(parts.size()));
      sources.add(
          new Observations.Source(new CircuitState.Member(one.fault(), one.site()), leaks, wet));
    }
    return sources;
  }

  private RandomGenerator random(int place) {
    return new Well19937c(exercise.secret().seed() * 7919 + place);
  }
}
