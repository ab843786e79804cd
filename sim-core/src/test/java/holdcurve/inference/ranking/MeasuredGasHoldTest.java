package holdcurve.inference.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import holdcurve.oracle.ReferenceTable;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.LogImport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The only open measured hold with a known order of leaks that was found, of gas: seven chambers,
 * of which the metal one is the leak-tight reference (student thesis data, Delft University of
 * Technology, 2021, repository "3D-printed-pneumatic-actuator", CC0 1.0). Read by the reader of
 * gauge logs and ranked by the same likelihood as a fuel circuit. What little fuel the narrow hose
 * would hold doesn't swell or shrink enough to matter, as there is none in a chamber of gas.
 *
 * <p>A gas chamber stands in for a circuit as what it is to a gauge: something that gives a fixed
 * volume for each bar, here 1 mL since the chambers' volumes aren't known, so that sizes are good
 * for comparison only.
 */
class MeasuredGasHoldTest {
  private static final String CHAMBER =
      """
      { "format": "holdcurve-circuit/1", "title": "a chamber of gas",
        "parts": [
          { "kind": "tank", "id": "tank" },
          { "kind": "check-valve", "id": "inlet", "from": "tank", "to": "inside",
            "weep_mL_min": 0.0001 },
          { "kind": "hose", "id": "chamber", "from": "inside", "to": "end", "length_m": 1, "bore_mm": 2,
            "compliance_mL_bar_m": %s, "quick_creep_percent": 0, "slow_creep_percent": 0 },
          { "kind": "injector", "id": "fittings", "at": "end", "weep_mL_min": 0.0001 },
          { "kind": "gauge", "id": "sensor", "at": "end", "lag_s": 0.05, "air_mL": 0 },
          { "kind": "regulator", "id": "outlet", "from": "end", "to": "tank", "set_bar": 6,
            "reseat_drop_bar": 0, "weep_mL_min": 0.0001 }
        ] }
      """;

  private static final String REFERENCE = "metal reference chamber";

  /** What loses more than twice as much as the reference by a straight line, least first. */
  private static final List<String> LEAKY =
      List.of(
          "resin print B",
          "filament print 0.10 mm",
          "filament print 0.15 mm",
          "filament print 0.20 mm");

  @TempDir Path folder;

  /** Readings scatter by 3 to 4 mbar. */
  private static final GaugeSpec SENSOR = new GaugeSpec(10e5, 0.005, 500);

  /** For the first seconds, air is still let in; the leakiest show when that ends [s]. */
  private static final double SHUT_IN = 10;

  private static Map<String, StringBuilder> logs() {
    Map<String, StringBuilder> logs = new LinkedHashMap<>();
    for (CSVRecord row : ReferenceTable.rows("chamber_pressure_hold.csv")) {
      StringBuilder log =
          logs.computeIfAbsent(
              row.get("chamber"), name -> new StringBuilder("time_s,pressure_bar\n"));
      double time = ReferenceTable.number(row, "time_s") - SHUT_IN;
      if (time >= 0) {
        log.append(time + "," + row.get("pressure_bar") + "\n");
      }
    }
    return logs;
  }

  /**
   * The ranking of a hold of something that is nothing but a storage and a leak.
   *
   * @param compliance of the storage [mL/bar]
   */
  static Ranking ranked(Path folder, String name, String text, double compliance)
      throws IOException {
    Path file = folder.resolve("chamber.circuit.json");
    Files.writeString(file, CHAMBER.formatted(compliance));
    LogImport log = GaugeLogReader.read(name, text);
    double filled = log.log().hold().get(0).pressure();
    // no regulator holds such a pressure, so the reader wouldn't take it
    Circuit circuit = CircuitReader.read(file).with("outlet", Regulator.SET, filled);
    HoldTest hold = HoldTest.of(name, Set.of(), log.log());
    Job job = new Job(name, circuit, SENSOR, List.of(hold), Map.of(), List.of());
    FaultCatalogue holes = new FaultCatalogue(List.of(new GasHole()), List.of());
    FaultPriors even = new FaultPriors(Map.of("hole", 0.5), 0.5, 1, 1, 1);
    return new RankingService(holes, even, 1).rank(job, 1, Progress.NONE);
  }

  private record Chamber(String name, double leak, double sound) {}

  private static final String LINES =
      "measured at Delft University of Technology, 2021; straight line, computed apart";

  /** What the priors take for the error of a model, over the time of these holds [bar/min]. */
  private static final double MODEL_ERROR = 0.0043;

  /** Chambers that don't empty. */
  private static final List<String> LINED =
      List.of(
          REFERENCE,
          "resin print A",
          "resin print B",
          "filament print 0.06 mm",
          "filament print 0.10 mm");

  /**
   * What the leak takes at the start [bar/min]. The readings are scaled to begin at 2 bar, where a
   * leak is stated, since its law is left open elsewhere.
   */
  private double loss(String name, String text) throws IOException {
    List<String> lines = text.lines().skip(1).toList();
    double scale = 2 / Double.parseDouble(lines.get(0).split(",")[1]);
    StringBuilder log = new StringBuilder("time_s,pressure_bar\n");
    for (String line : lines) {
      String[] cells = line.split(",");
      log.append(cells[0] + "," + scale * Double.parseDouble(cells[1]) + "\n");
    }
    double leak =
        ranked(folder, name, log.toString(), 1)
            .suspect("hole@chamber")
            .leak()
            .orElseThrow()
            .middle();
    return Unit.MILLILITRE_PER_MINUTE.fromSi(leak) / scale;
  }

  private Chamber chamber(String name, String text) {
    try {
      Ranking ranking = ranked(folder, name, text, 1);
      double leak = ranking.suspect("hole@chamber").leak().orElseThrow().middle();
      return new Chamber(name, leak, ranking.suspect(Suspect.NONE).probability());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void theReferenceLeaksLeastAndTheLeakyOnesComeInOrder() {
    List<Chamber> chambers =
        logs().entrySet().stream()
            .map(e -> chamber(e.getKey(), e.getValue().toString()))
            .sorted(Comparator.comparingDouble(Chamber::leak))
            .toList();
    List<String> names = chambers.stream().map(Chamber::name).toList();
    assertEquals(REFERENCE, names.get(0), chambers.toString());
    assertEquals(LEAKY, names.stream().filter(LEAKY::contains).toList(), chambers.toString());
    double reference = chambers.get(0).sound();
    for (Chamber other : chambers.subList(1, chambers.size())) {
      double most = LEAKY.contains(other.name()) ? reference / 10 : reference;
      assertTrue(other.sound() < most, chambers.toString());
    }
  }

  @OutsideCheck(
      what = "loss of gas, metal reference chamber",
      source = LINES,
      value = "0.0141 bar/min",
      tolerance = MODEL_ERROR,
      unit = "bar/min, 0.01 bar in 140 s",
      misses = "its fall flattens to 0.0097 bar/min in the last minute")
  @OutsideCheck(
      what = "loss of gas, resin print A",
      source = LINES,
      value = "0.0172 bar/min",
      tolerance = MODEL_ERROR,
      unit = "bar/min, 0.01 bar in 140 s",
      misses = "its fall steepens to 0.0182 bar/min in the last minute")
  @OutsideCheck(
      what = "loss of gas, resin print B",
      source = LINES,
      value = "0.0422 bar/min",
      tolerance = MODEL_ERROR,
      unit = "bar/min, 0.01 bar in 140 s",
      misses = "its fall flattens to 0.0285 bar/min in the last minute")
  @OutsideCheck(
      what = "loss of gas, filament print 0.06 mm",
      source = LINES,
      value = "0.0223 bar/min",
      tolerance = MODEL_ERROR,
      unit = "bar/min, 0.01 bar in 140 s",
      misses = "its fall flattens to 0.0170 bar/min in the last minute")
  @OutsideCheck(
      what = "loss of gas, filament print 0.10 mm",
      source = LINES,
      value = "0.0433 bar/min",
      tolerance = MODEL_ERROR,
      unit = "bar/min, 0.01 bar in 140 s",
      misses = "its fall flattens to 0.0376 bar/min in the last minute")
  @Test
  void lossesAreThoseOfStraightLines() throws IOException {
    Map<String, StringBuilder> logs = logs();
    for (String name : LINED) {
      OutsideChecks.holds("loss of gas, " + name, loss(name, logs.get(name).toString()));
    }
  }
}
