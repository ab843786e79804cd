package holdcurve.calibration.blind;

import holdcurve.calibration.GeneratedCase;
import holdcurve.calibration.blind.HoldPlan.Clamp;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Makes jobs, as files, from a simulator of its own whose physics are not the program's: hoses
 * creep over a spectrum of times and stiffen, leaks follow any exponent from 0.5 to 1.3, seats shut
 * differently each time, clamps slip and go on one after the other, dampers are pistons or
 * bladders, needles lag and stick, and fuel warms and cools as it likes. What the circuit file says
 * is what somebody estimated.
 */
public final class BlindCases {
  private static final double SOUND = 0.35;
  private static final double TWO_FAULTS = 0.05;
  private static final double LOGGER = 0.06;

  /** Between the seeds of a car's two jobs. */
  private static final long EARLIER = 1_000_000_007L;

  private static final double ML_MIN = 1e-6 / 60;

  /** Common practice, no source: of 2.0 bar, 1.7 bar must be left after five minutes. */
  private static final double PASS_SHARE = 0.85;

  private static final double PASS_TIME = 300;

  private record Planned(String id, boolean feed, boolean back) {}

  private static final List<Planned> FOUR =
      List.of(
          new Planned("as it stands", false, false),
          new Planned("feed clamped", true, false),
          new Planned("return clamped", false, true),
          new Planned("both clamped", true, true));

  private final Path folder;

  /**
   * @param folder receives a folder a case
   */
  public BlindCases(Path folder) {
    this.folder = folder;
  }

  /**
   * One case; the same seed gives the same car, fault and weather, and the first test alike,
   * whatever the number of tests.
   *
   * @param tests 1 for the base test alone, up to 4
   */
  public GeneratedCase make(long seed, int tests) {
    Draw draw = new Draw(seed);
    Car car = passing(draw);
    List<Trouble> troubles = troubles(draw, car);
    for (Trouble trouble : troubles) {
      car = trouble.tornStroke() > 0 ? car.withTornDamper(trouble.tornStroke()) : car;
    }
    return write("case-" + seed + "-" + tests, seed, draw, car, troubles, tests);
  }

  /**
   * The car of {@link #make} a year before, without its fault, on other days and read off another
   * gauge.
   */
  public GeneratedCase makeEarlier(long seed, int tests) {
    Car car = passing(new Draw(seed));
    Draw other = new Draw(seed + EARLIER);
    return write("earlier-" + seed + "-" + tests, seed, other, car, List.of(), tests);
  }

  private GeneratedCase write(
      String name, long seed, Draw draw, Car car, List<Trouble> troubles, int tests) {
    boolean logger = draw.chance(LOGGER);
    SimulatedNeedle needle = SimulatedNeedle.draw(draw, car.set(), logger);
    try {
      Path home = Files.createDirectories(folder.resolve(name));
      Files.write(home.resolve("car.circuit.json"), circuit(seed, car));
      List<String> entries = holds(draw, car, troubles, needle, logger, tests, home);
      Path job = home.resolve("case.job.json");
      Files.write(job, job(seed, needle, entries));
      Optional<Trouble> first = troubles.stream().findFirst();
      return new GeneratedCase(
          job,
          troubles.stream().map(Trouble::id).toList(),
          first.map(Trouble::size).orElse(Double.NaN));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A car that would stay above the pass limit of the trade at a steady temperature, if it had no
   * fault: that is what sound means.
   */
  private static Car passing(Draw draw) {
    Car car = Car.draw(draw);
    while (!passes(car)) {
      car = Car.draw(draw);
    }
    return car;
  }

  private static boolean passes(Car car) {
    HoldPlan plan = new HoldPlan(car.set(), 20, Clamp.NONE, Clamp.NONE, t -> 0, t -> 0);
    double[] pressure = new HoldOde(car, List.of(), plan, HoldOde.rested(car)).run(PASS_TIME);
    return pressure[pressure.length - 1] >= PASS_SHARE * car.set();
  }

  private static List<Trouble> troubles(Draw draw, Car car) {
    double one = draw.between(0, 1);
    if (one < SOUND) {
      return List.of();
    }
    Trouble first = Trouble.draw(draw, car);
    if (one < 1 - TWO_FAULTS) {
      return List.of(first);
    }
    Trouble second = Trouble.draw(draw, car);
    while (second.id().equals(first.id())) {
      second = Trouble.draw(draw, car);
    }
    return List.of(first, second);
  }

  private List<String> holds(
      Draw draw,
      Car car,
      List<Trouble> troubles,
      SimulatedNeedle needle,
      boolean logger,
      int tests,
      Path home)
      throws IOException {
    double[][] crept = HoldOde.rested(car);
    HoldLog log = new HoldLog(draw, needle, logger);
    double span = log.span();
    double clampSlip = draw.chance(0.3) ? draw.between(0, 0.06) : draw.between(0, 0.015);
    List<String> entries = new ArrayList<>();
    for (Planned test : FOUR.subList(0, tests)) {
      double at = draw.between(3, 10);
      Clamp feed = test.feed() ? clamp(draw, at, clampSlip) : Clamp.NONE;
      Clamp back = test.back() ? clamp(draw, at + draw.between(0, 7), clampSlip) : Clamp.NONE;
      DoubleUnaryOperator warming = Weather.draw(draw);
      double floorShare = draw.between(0, 1);
      HoldPlan plan =
          new HoldPlan(
              car.set() + draw.between(1e3, 8e3),
              draw.one(List.of(10.0, 20.0, 30.0, 60.0)),
              feed,
              back,
              warming,
              t -> floorShare * warming.applyAsDouble(t));
      List<Leak> leaks = new ArrayList<>();
      troubles.forEach(trouble -> leaks.add(trouble.inOneHold(draw)));
      HoldOde ode = new HoldOde(car, leaks, plan, crept);
      double[] pressure = ode.run(span);
      ode.rest(draw.between(60, 900), 0.7 * pressure[pressure.length - 1]);
      double start = draw.between(14, 26);
      DoubleUnaryOperator measured =
          draw.chance(0.15) ? t -> start + warming.applyAsDouble(t) : null;
      String name = "log-" + entries.size() + ".csv";
      Files.write(home.resolve(name), log.write(pressure, measured));
      entries.add(entry(draw, test, plan, name));
    }
    return entries;
  }

  private static Clamp clamp(Draw draw, double at, double slip) {
    return new Clamp(at, slip * ML_MIN * draw.between(0.3, 1.7), draw.between(0, 0.15e-6));
  }

  private static List<String> circuit(long seed, Car car) {
    return List.of(
        "{ \"format\": \"holdcurve-circuit/1\",",
        "  \"title\": \"invented circuit " + seed + "\",",
        "  \"fluid\": { \"kind\": \"petrol\" },",
        "  \"parts\": [",
        String.join(",\n", car.parts()),
        "] }");
  }

  private static List<String> job(long seed, SimulatedNeedle needle, List<String> entries) {
    return List.of(
        "{ \"format\": \"holdcurve-job/1\",",
        "  \"title\": \"invented case " + seed + "\",",
        "  \"circuit\": \"car.circuit.json\",",
        String.format(
            Locale.ROOT,
            "  \"gauge\": { \"range_bar\": %.0f, \"class_percent\": %.1f, \"resolution_bar\": %.3f },",
            needle.range() / 1e5,
            needle.accuracyClass() * 100,
            needle.resolution() / 1e5),
        "  \"tests\": [",
        String.join(",\n", entries),
        "] }");
  }

  /** One clamp time is written down for both, to the second, and the priming as it was meant. */
  private static String entry(Draw draw, Planned test, HoldPlan plan, String log) {
    List<String> hoses = new ArrayList<>();
    if (test.feed()) {
      hoses.add("\"feed-hose\"");
    }
    if (test.back()) {
      hoses.add("\"return-hose\"");
    }
    double first = Math.min(plan.feed().at(), plan.back().at());
    String time =
        hoses.isEmpty() || draw.chance(0.2)
            ? ""
            : String.format(Locale.ROOT, ", \"clamp_time_s\": %.0f", first);
    return String.format(
        Locale.ROOT,
        "{ \"id\": \"%s\", \"clamped\": [%s]%s, \"prime_s\": %.0f, \"log\": \"%s\" }",
        test.id(),
        String.join(", ", hoses),
        time,
        plan.soak(),
        log);
  }
}
