package holdcurve.calibration.blind;

import holdcurve.calibration.GeneratedCase;
import holdcurve.calibration.blind.Leak.Place;
import holdcurve.calibration.blind.RunUpCar.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Makes jobs, as files, in which the needle was filmed from before the pump was switched on to some
 * seconds after it stopped, and read each minute from then on. Physics as in {@link RunUpOde}; half
 * the circuit files are outlines. Faults are of sizes that a mechanic would call one: a sound
 * regulator rises by up to 0.5 bar, so a blocked return adds 0.6 or more, a weak pump stays 15 % or
 * more below what is set, a low regulator 14 %, and air takes a second or more to squeeze.
 */
public final class RunUpCases {
  private static final double ML_MIN = 1e-6 / 60;

  private final Path folder;

  /**
   * @param folder receives a folder a case
   */
  public RunUpCases(Path folder) {
    this.folder = folder;
  }

  /** Names of what can be hidden in a case. */
  public static List<String> kinds() {
    return Arrays.stream(Kind.values()).map(Enum::name).toList();
  }

  /** One case; the same seed gives the same car and film for every kind but for the fault. */
  public GeneratedCase make(String kindName, long seed) {
    Kind kind = Kind.valueOf(kindName);
    Draw draw = new Draw(seed);
    Car car = Car.draw(draw);
    boolean outline = draw.chance(0.5);
    SimulatedNeedle needle =
        SimulatedNeedle.draw(draw, car.set(), false).withLag(draw.between(0.1, 1));
    double left = draw.between(0, 0.3e5);
    double before = Math.rint(draw.between(1, 4));
    double on = before + draw.between(-0.4, 0.4);
    double off = before + Math.rint(draw.between(8, 20));
    boolean noted = draw.chance(0.5);
    RunUpCar plumbing = RunUpCar.draw(draw, car, kind);
    Leak leak = null;
    String fault = fault(kind);
    if (kind == Kind.LOW_REGULATOR) {
      double drop = draw.between(0.14, 0.4) * car.set();
      if (draw.chance(0.5)) {
        plumbing = plumbing.openingAt(car.set() - drop);
        fault = "regulator-set-low";
      } else {
        double shut = car.set() - drop;
        double bleed = 40 * ML_MIN * draw.factor(0.8);
        leak =
            new Leak(
                Place.RAIL, Place.RETURN, bleed, shut + 1e5, draw.between(0.6, 1.1), shut, true);
      }
    }
    double[] pressure = new RunUpOde(car, plumbing, leak).run(left, on, off, off + 601);
    needle = needle.longEnoughFor(Arrays.stream(pressure).max().orElseThrow());
    double[] shown = needle.follow(pressure);
    try {
      Path home = Files.createDirectories(folder.resolve(kind + "-" + seed));
      Files.write(home.resolve("car.circuit.json"), circuit(seed, car, outline, draw));
      Files.write(home.resolve("film.csv"), film(draw, needle, shown, before, off, noted));
      Path job = home.resolve("case.job.json");
      Files.write(job, job(seed, needle));
      return new GeneratedCase(job, fault.isEmpty() ? List.of() : List.of(fault), Double.NaN);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String fault(Kind kind) {
    return switch (kind) {
      case SOUND -> "";
      case WEAK_PUMP -> "weak-pump";
      case BLOCKED_RETURN -> "blocked-return";
      case TRAPPED_AIR -> "trapped-air";
      case LOW_REGULATOR -> "regulator-low-reseat";
    };
  }

  private static List<String> circuit(long seed, Car car, boolean outline, Draw draw) {
    String parts = String.join(",\n", car.parts());
    String body = "  \"fluid\": { \"kind\": \"petrol\" },\n  \"parts\": [\n" + parts + "] }";
    if (outline) {
      String cylinders = parts.replaceAll("(?s).*\"count\": (\\d+).*", "$1");
      String set = parts.replaceAll("(?s).*\"set_bar\": ([0-9.]+).*", "$1");
      body =
          String.format(
              Locale.ROOT,
              "  \"outline\": { \"cylinders\": %s, \"pipe_length_m\": %.1f, \"set_bar\": %s } }",
              cylinders,
              draw.between(2, 4.5),
              set);
    }
    return List.of(
        "{ \"format\": \"holdcurve-circuit/1\",",
        "  \"title\": \"invented circuit " + seed + "\",",
        body);
  }

  /** A film is looked at each second, from the second before the pump to the tenth of the hold. */
  private static List<String> film(
      Draw draw, SimulatedNeedle needle, double[] shown, double before, double off, boolean noted) {
    List<Double> times = new ArrayList<>();
    for (double t = -off; t <= 10; t++) {
      times.add(t);
    }
    for (double t = 30; t <= 600; t += t < 60 ? 30 : 60) {
      times.add(t);
    }
    List<String> lines = new ArrayList<>(List.of("time_s,pressure_bar,event"));
    for (double time : times) {
      double late = time > 10 ? draw.normal(0.5) : 0;
      int place = (int) Math.round(10 * (off + time + late));
      double eye = needle.resolution() * draw.normal(0.3);
      double at = shown[Math.max(0, Math.min(shown.length - 1, place))];
      double read = Math.max(0, Math.rint((at + eye) / needle.resolution()) * needle.resolution());
      String event = time == 0 ? "pump off" : noted && time == before - off ? "pump on" : "";
      lines.add(String.format(Locale.ROOT, "%.0f,%.3f,%s", time, read / 1e5, event));
    }
    return lines;
  }

  private static List<String> job(long seed, SimulatedNeedle needle) {
    return List.of(
        "{ \"format\": \"holdcurve-job/1\",",
        "  \"title\": \"invented run-up " + seed + "\",",
        "  \"circuit\": \"car.circuit.json\",",
        String.format(
            Locale.ROOT,
            "  \"gauge\": { \"range_bar\": %.0f, \"class_percent\": %.1f, \"resolution_bar\": %.3f },",
            needle.range() / 1e5,
            needle.accuracyClass() * 100,
            needle.resolution() / 1e5),
        "  \"tests\": [ { \"id\": \"film\", \"clamped\": [], \"log\": \"film.csv\" } ] }");
  }
}
