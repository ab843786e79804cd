package holdcurve.inference.runup;

import holdcurve.physics.network.Operation;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import holdcurve.record.log.TimedEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The part of a log before the last pump stop, as far as it can speak: readings after the pump
 * started, while it was known what the injectors drew. Times count from the pump stop, so they are
 * negative.
 *
 * @param test place of the hold test in its job
 * @param start when the pump started
 * @param stages what the injectors did, one after another, without gaps from start to pump stop
 * @param readings that speak: at most {@value #MOST} a stage, close together where things change
 */
public record RunUp(int test, Start start, List<Stage> stages, List<Sample> readings) {
  /** Readings kept of a stage. */
  static final int MOST = 14;

  /** Time after a switch beyond which a running circuit stands still [s]. */
  static final double SETTLED = 5;

  /** Below this share of the highest reading the pump hasn't run yet [-]. */
  private static final double AT_REST = 0.3;

  /** Nor while the needle has moved by less than this share of it [-]. */
  private static final double MOVED = 0.05;

  /** How long before its first reading a pump has run that was running then, at least [s]. */
  private static final double LONG_RUNNING = 20;

  /** Time by which a reading may be off its moment, at least: assumed, from a film [s]. */
  private static final double MOMENT = 0.05;

  /** Likewise, of the time to the next reading, to which moments are rounded: assumed [-]. */
  private static final double OFF_MOMENT = 0.1;

  /** But by no more than this: assumed [s]. */
  private static final double MOMENT_AT_MOST = 0.3;

  /** Time by which a noted start of the pump may be off, at least: assumed [s]. */
  private static final double NOTED = 0.1;

  /** Likewise, of the time between two readings, to which it is often rounded: assumed [-]. */
  private static final double ROUNDED = 0.3;

  /** But by no more than this: assumed [s]. */
  private static final double NOTED_AT_MOST = 0.5;

  /** A last reading taken longer before the stop says less of the hold's start [s]. */
  private static final double JUST_BEFORE = 5;

  /** Reading error beside rounding, as in the likelihood of holds: assumed [-]. */
  private static final double EYE_SHARE = 0.4;

  /** Smallest reading error of any instrument [Pa]. */
  private static final double LEAST_EYE = 150;

  /**
   * A start of the pump.
   *
   * @param time [s]
   * @param deviation by which that may be off [s]
   * @param pressure the needle showed then [Pa gauge]; absent if nobody looked
   */
  public record Start(double time, double deviation, OptionalDouble pressure) {}

  /**
   * A stretch in which nothing is switched.
   *
   * @param pump whether the pump runs
   * @param duty share of the time that injectors are open [-]; not-a-number if unknown
   */
  public record Stage(double from, double to, boolean pump, double duty) {
    boolean isKnown() {
      return !Double.isNaN(duty);
    }
  }

  /**
   * A reading that speaks.
   *
   * @param time [s]
   * @param pressure as read [Pa gauge]
   * @param deviation of the reading from the needle's true place at that moment [Pa]
   */
  public record Sample(double time, double pressure, double deviation) {}

  public RunUp {
    stages = List.copyOf(stages);
    readings = List.copyOf(readings);
  }

  /**
   * What a test logged before the pump stop; empty if nothing that speaks.
   *
   * @param place of the test in its job
   */
  public static Optional<RunUp> of(HoldTest test, int place, GaugeSpec gauge) {
    List<Reading> before =
        test.log().buildUp().stream().filter(reading -> !reading.doubtful()).toList();
    if (before.isEmpty()) {
      return Optional.empty();
    }
    Start start = start(test, before);
    List<Stage> stages = stages(test, start.time());
    List<Sample> samples = new ArrayList<>();
    for (Stage stage : stages) {
      if (stage.isKnown()) {
        samples.addAll(samples(stage, before, gauge));
      }
    }
    return samples.isEmpty()
        ? Optional.empty()
        : Optional.of(new RunUp(place, start, stages, samples));
  }

  private static Start start(HoldTest test, List<Reading> before) {
    OptionalDouble noted =
        events(test).stream()
            .filter(event -> event.event().kind() == LogEvent.Kind.PUMP_ON && event.time() < 0)
            .mapToDouble(TimedEvent::time)
            .min();
    if (noted.isPresent()) {
      double on = noted.getAsDouble();
      return new Start(on, noted(before, on), standing(before, on));
    }
    double highest = before.stream().mapToDouble(Reading::pressure).max().orElseThrow();
    int rest = -1;
    while (rest + 1 < before.size() && isAtRest(before, rest + 1, highest)) {
      rest++;
    }
    if (rest < 0 || rest + 1 == before.size()) {
      double longAgo = Math.min(-test.primeTime(), before.get(0).time() - LONG_RUNNING);
      return new Start(longAgo, NOTED, OptionalDouble.empty());
    }
    Reading last = before.get(rest);
    double gap = before.get(rest + 1).time() - last.time();
    return new Start(
        last.time() + gap / 2, Math.max(NOTED, gap / 3), OptionalDouble.of(last.pressure()));
  }

  /** Air in the rail lets the needle creep: what has moved is no longer at rest. */
  private static boolean isAtRest(List<Reading> before, int i, double highest) {
    double pressure = before.get(i).pressure();
    return pressure < AT_REST * highest && pressure - before.get(0).pressure() < MOVED * highest;
  }

  private static double noted(List<Reading> before, double on) {
    double last = Double.NEGATIVE_INFINITY;
    for (Reading reading : before) {
      if (reading.time() > on) {
        double gap = ROUNDED * (reading.time() - Math.max(last, on - 1));
        return Math.max(NOTED, Math.min(NOTED_AT_MOST, gap));
      }
      last = reading.time();
    }
    return NOTED;
  }

  private static OptionalDouble standing(List<Reading> before, double on) {
    return before.stream()
        .filter(reading -> reading.time() <= on)
        .reduce((first, second) -> second)
        .map(reading -> OptionalDouble.of(reading.pressure()))
        .orElse(OptionalDouble.empty());
  }

  private static List<TimedEvent> events(HoldTest test) {
    return test.log().fromPumpStop().events();
  }

  private static List<Stage> stages(HoldTest test, double on) {
    List<Stage> stages = new ArrayList<>();
    Stage now = new Stage(on, 0, true, 0);
    for (TimedEvent event : events(test)) {
      Stage next = after(event, now);
      if (next != now && event.time() < 0) {
        if (next.from() > now.from()) {
          stages.add(new Stage(now.from(), next.from(), now.pump(), now.duty()));
        }
        now = next;
      }
    }
    stages.add(now);
    return stages;
  }

  /** What an event makes of a stage; the same stage if it switches nothing. */
  private static Stage after(TimedEvent event, Stage now) {
    double from = Math.max(now.from(), event.time());
    LogEvent.Kind kind = event.event().kind();
    if (kind == LogEvent.Kind.PUMP_ON || kind == LogEvent.Kind.PUMP_STOP) {
      boolean pump = kind == LogEvent.Kind.PUMP_ON;
      return pump == now.pump() ? now : new Stage(from, 0, pump, now.duty());
    }
    OptionalDouble duty = InjectorEvents.duty(event.event());
    return duty.isEmpty() ? now : new Stage(from, 0, now.pump(), duty.getAsDouble());
  }

  /** Those nearest to moments that are even in the logarithm of the time since the switch. */
  private static List<Sample> samples(Stage stage, List<Reading> before, GaugeSpec gauge) {
    List<Integer> inside = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      if (before.get(i).time() > stage.from() && before.get(i).time() < stage.to()) {
        inside.add(i);
      }
    }
    List<Sample> samples = new ArrayList<>();
    int last = -1;
    int wanted = Math.min(MOST, inside.size());
    for (int k = 0; k < wanted; k++) {
      int at = inside.size() <= MOST ? k : nearest(stage, before, inside, k);
      if (at > last) {
        samples.add(sample(before, inside.get(at), gauge));
        last = at;
      }
    }
    return samples;
  }

  private static int nearest(Stage stage, List<Reading> before, List<Integer> inside, int k) {
    double first = before.get(inside.get(0)).time() - stage.from();
    double last = before.get(inside.get(inside.size() - 1)).time() - stage.from();
    double wanted = first * Math.pow(last / first, k / (MOST - 1.0));
    int best = 0;
    for (int i = 1; i < inside.size(); i++) {
      double away = Math.abs(before.get(inside.get(i)).time() - stage.from() - wanted);
      if (away < Math.abs(before.get(inside.get(best)).time() - stage.from() - wanted)) {
        best = i;
      }
    }
    return best;
  }

  private static Sample sample(List<Reading> before, int i, GaugeSpec gauge) {
    double off = Math.max(off(before, i, i - 1), off(before, i, i + 1));
    double eye = Math.max(EYE_SHARE * gauge.resolution(), LEAST_EYE);
    double deviation = Math.hypot(Math.hypot(gauge.roundingUncertainty(), eye), off);
    return new Sample(before.get(i).time(), before.get(i).pressure(), deviation);
  }

  /** How far the needle moves in the time by which a reading may be off its moment [Pa]. */
  private static double off(List<Reading> before, int i, int other) {
    if (other < 0 || other >= before.size()) {
      return 0;
    }
    double apart = Math.abs(before.get(other).time() - before.get(i).time());
    double moved = Math.abs(before.get(other).pressure() - before.get(i).pressure());
    double off = Math.max(MOMENT, Math.min(MOMENT_AT_MOST, OFF_MOMENT * apart));
    return apart == 0 ? 0 : moved / apart * off;
  }

  /** What the needle showed just before the pump stopped [Pa gauge]; empty if nobody looked. */
  public OptionalDouble justBefore() {
    Sample last = readings.get(readings.size() - 1);
    return last.time() >= -JUST_BEFORE
        ? OptionalDouble.of(last.pressure())
        : OptionalDouble.empty();
  }

  /** Whether all its readings were taken long after a switch, with the pump running. */
  boolean isSettled() {
    return readings.stream()
        .allMatch(
            reading -> {
              Stage stage = stageAt(reading.time());
              return stage.pump() && reading.time() - stage.from() > 2 * SETTLED;
            });
  }

  /** The last reading of a running pump that stood still, with the injectors shut. */
  Optional<Sample> lastSettled() {
    return readings.stream()
        .filter(
            reading -> {
              Stage stage = stageAt(reading.time());
              boolean still = reading.time() - stage.from() > SETTLED;
              return stage.pump() && stage.duty() == 0 && still;
            })
        .reduce((first, second) -> second);
  }

  Stage stageAt(double time) {
    return stages.stream()
        .filter(stage -> time < stage.to())
        .findFirst()
        .orElse(stages.get(stages.size() - 1));
  }

  /** What is done in a stage, the fuel as warm as it was measured. */
  static Operation operation(Stage stage, double fuelTemperature) {
    return Operation.holding()
        .withPump(stage.pump())
        .withEngine(stage.isKnown() ? stage.duty() : 0, 0)
        .withFuelTemperature(fuelTemperature);
  }
}
