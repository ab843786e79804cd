package holdcurve.record.finding;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.file.CircuitReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.part.CircuitOutline;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.EyeReadings;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.Well19937c;

/** Circuits, holds of them as a gauge shows them, and jobs with findings beside those. */
final class Cars {
  static final FaultCatalogue CATALOGUE = FaultCatalogue.load();

  private Cars() {}

  static Circuit shipped(String name) {
    return CircuitReader.read(
        Path.of(
            System.getProperty("holdcurve.root", ".."),
            "scenarios/circuits/" + name + ".circuit.json"));
  }

  /** A circuit of which the owner knew only this; 2.5 bar and 3.5 m of pipe. */
  static Circuit outline(int cylinders, boolean damper, boolean coldStart) {
    CircuitOutline outline =
        new CircuitOutline(
            cylinders,
            OptionalDouble.of(3.5),
            OptionalDouble.empty(),
            OptionalDouble.of(Unit.BAR.toSi(2.5)),
            damper,
            coldStart);
    return new Circuit("outline (invented)", Petrol.summer(), outline.parts());
  }

  /** A sound circuit with a fault of a size at its first site. */
  static Condition with(Circuit circuit, String id, double mLPerMinute) {
    LeakFault fault = CATALOGUE.byId(id).orElseThrow();
    double[] values = FaultParameter.usual(fault.parameters());
    values[0] = Unit.MILLILITRE_PER_MINUTE.toSi(mLPerMinute);
    return fault.apply(Condition.sound(circuit), fault.sites(circuit).get(0), values);
  }

  /** A hold of ten minutes, read by eye every half minute. */
  static HoldTest hold(String id, Condition condition, Set<String> clamped) {
    double[] times = IntStream.rangeClosed(0, 20).mapToDouble(i -> 30.0 * i).toArray();
    double set = condition.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    HoldSetup setup = HoldSetup.plain(set).clampedAt(5, clamped);
    double[] needle = new HoldSimulator().readings(condition, setup, times);
    return read(
        id, times, EyeReadings.of(needle, GaugeSpec.usual(), 0, new Well19937c(7)), clamped);
  }

  /** A needle that sinks as e^(−t/τ) does. */
  static HoldTest sinking(double fromBar, double toBar) {
    double[] times = IntStream.rangeClosed(0, 10).mapToDouble(i -> 60.0 * i).toArray();
    double[] bar =
        IntStream.rangeClosed(0, 10)
            .mapToDouble(i -> 2000 * Math.round(50 * fromBar * Math.pow(toBar / fromBar, i / 10.0)))
            .toArray();
    return read("base", times, bar, Set.of());
  }

  private static HoldTest read(String id, double[] times, double[] pascal, Set<String> clamped) {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      readings.add(Reading.of(times[i], pascal[i]));
    }
    return HoldTest.of(id, clamped, new GaugeLog("invented", readings, 0));
  }

  static Job job(Circuit circuit, List<HoldTest> tests, Finding... findings) {
    return new Job("invented", circuit, GaugeSpec.usual(), tests, Map.of(), List.of())
        .withFindings(List.of(findings));
  }

  static Ranking rank(Job job) {
    return new RankingService(CATALOGUE).rank(job, 1, Progress.NONE);
  }

  /** Probability that one of some faults at their sites is there, alone or beside another. */
  static double probability(Ranking ranking, List<String> ids) {
    return ranking.suspects().stream()
        .filter(s -> List.of(s.id().split("\\+")).stream().anyMatch(ids::contains))
        .mapToDouble(Suspect::probability)
        .sum();
  }

  static String leading(Ranking ranking) {
    StringBuilder text = new StringBuilder();
    ranking.suspects().stream()
        .limit(5)
        .forEach(s -> text.append(String.format(" %s %.4f;", s.id(), s.probability())));
    return text.toString();
  }
}
