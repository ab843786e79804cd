package holdcurve.record.job;

import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Invented holds and jobs. */
public final class Holds {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root"),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));

  private Holds() {}

  /** A hold with one reading a minute [bar]. */
  public static HoldTest hold(String id, String date, double... bar) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < bar.length; i++) {
      readings.add(Reading.of(60 * i, bar[i] * 1e5));
    }
    return new HoldTest(
        id,
        Set.of(),
        5,
        20,
        OptionalDouble.empty(),
        new GaugeLog("invented", readings, 0),
        date,
        "");
  }

  /**
   * @param tests ids, each with a date after a blank if it has one
   */
  public static Job job(List<Repair> repairs, String... tests) {
    return job(
        repairs,
        Arrays.stream(tests)
            .map(test -> (test + " ").split(" ", 2))
            .map(words -> hold(words[0], words[1].strip(), 2, 1.9, 1.8))
            .toList());
  }

  public static Job job(List<Repair> repairs, List<HoldTest> tests) {
    Upkeep none = Upkeep.none(CIRCUIT);
    return new Job(
        "invented",
        CIRCUIT,
        GaugeSpec.usual(),
        tests,
        List.of(),
        Map.of(),
        List.of(),
        new Upkeep(repairs, none.pass(), false, none.refit(), false));
  }
}
