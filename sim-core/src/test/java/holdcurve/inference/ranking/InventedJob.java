package holdcurve.inference.ranking;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.file.CircuitReader;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
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
import java.util.Set;
import java.util.stream.IntStream;

/** A job of four holds with a dripping rail; all of it invented. */
public final class InventedJob {
  /** A hole at the rail whose size varies between tests. */
  public record Drip() implements LeakFault {
    @Override
    public String id() {
      return "drip";
    }

    @Override
    public String name() {
      return "Drip";
    }

    @Override
    public String symptoms() {
      return "It drips.";
    }

    @Override
    public String repair() {
      return "Stop it.";
    }

    @Override
    public List<Site> sites(Circuit circuit) {
      return List.of(new Site("rail", "at the rail", "rail", List.of("ring-line")));
    }

    @Override
    public List<FaultParameter> parameters() {
      Prior size = new Prior.LogNormal(Unit.MILLILITRE_PER_MINUTE.toSi(0.4), 3);
      Prior turn = new Prior.LogNormal(Unit.BAR.toSi(0.3), 5);
      return List.of(
          new FaultParameter("leak", Unit.MILLILITRE_PER_MINUTE, size, "invented", true),
          new FaultParameter("turn", Unit.BAR, turn, "invented", false));
    }

    @Override
    public Condition apply(Condition condition, Site site, double[] parameters) {
      OrificeLaw law = OrificeLaw.throughPoint(parameters[0], 2e5, parameters[1]);
      return condition.with(new LeakPath(site.point(), Circuit.AIR, law));
    }
  }

  private static final List<Set<String>> CLAMPED =
      List.of(
          Set.of(), Set.of("feed-hose"), Set.of("return-hose"), Set.of("feed-hose", "return-hose"));

  private InventedJob() {}

  private static Circuit circuit() {
    return CircuitReader.read(
        Path.of(
            System.getProperty("holdcurve.root", ".."),
            "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  }

  private static double[] times() {
    return IntStream.range(0, 60).mapToDouble(i -> i < 12 ? 5 * i : 60 + 12 * (i - 12)).toArray();
  }

  /** Four holds of 60 readings each. */
  public static Job of() {
    Circuit circuit = circuit();
    Drip drip = new Drip();
    Condition leaky =
        drip.apply(
            Condition.sound(circuit), drip.sites(circuit).get(0), new double[] {6.7e-9, 3e4});
    List<HoldTest> tests = new ArrayList<>();
    for (Set<String> clamped : CLAMPED) {
      HoldSetup setup = HoldSetup.plain(2.03e5).clampedAt(5, clamped);
      double[] needle = new HoldSimulator().readings(leaky, setup, times());
      double[] read = EyeReadings.of(needle, GaugeSpec.usual(), 5 + tests.size());
      List<Reading> readings = new ArrayList<>();
      for (int i = 0; i < read.length; i++) {
        readings.add(Reading.of(times()[i], read[i]));
      }
      GaugeLog log = new GaugeLog("invented", readings, 0);
      tests.add(HoldTest.of("hold " + tests.size(), clamped, log));
    }
    return new Job("invented", circuit, GaugeSpec.usual(), tests, Map.of(), List.of());
  }

  public static HypothesisModel model(Job job, HoldSimulator simulator) {
    return model(JobModel.of(job), simulator);
  }

  public static HypothesisModel model(JobModel data, HoldSimulator simulator) {
    return new HypothesisModel(data, hypothesis(data.job()), UnknownPriors.usual(), simulator);
  }

  /** The true hypothesis about it. */
  public static Hypothesis hypothesis(Job job) {
    Drip drip = new Drip();
    return new Hypothesis(
        List.of(new Hypothesis.Member(drip, drip.sites(job.circuit()).get(0))), 1);
  }
}
