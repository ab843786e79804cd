package holdcurve.plugin;

import holdcurve.circuit.*;
import holdcurve.fault.*;
import holdcurve.file.CircuitReader;
import holdcurve.hold.*;
import holdcurve.infer.*;
import holdcurve.job.*;
import holdcurve.log.*;
import holdcurve.model.NetworkAssembler.Detail;
import java.nio.file.Path;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;

class TryRankingTest {
  @Test
  void tryIt() {
    Circuit c =
        CircuitReader.read(
            Path.of(
                System.getProperty("holdcurve.root", ".."),
                "scenarios/circuits/six-cylinder-return-line.circuit.json"));
    FaultCatalogue cat = FaultCatalogue.load();
    System.out.println(cat);
    LeakFault f = cat.byId("check-valve-seat").get();
    Condition truth =
        f.apply(Condition.sound(c), f.sites(c).get(0), new double[] {0.3e-6 / 60, 0.4});
    double[] times = {0, 15, 30, 60, 90, 120, 180, 240, 300, 360, 420, 480, 540, 600};
    List<HoldTest> tests = new ArrayList<>();
    int k = 0;
    for (Set<String> clamp :
        List.of(Set.<String>of(), Set.of("feed-hose"), Set.of("return-hose"))) {
      HoldSetup setup = HoldSetup.plain(2.03e5).clampedAt(5, clamp);
      double[] r =
          EyeReadings.of(
              new HoldSimulator(Detail.FULL, 1e-6).readings(truth, setup, times),
              GaugeSpec.usual(),
              42);
      System.out.println(Arrays.toString(r));
      List<Reading> rs = new ArrayList<>();
      for (int i = 0; i < r.length; i++) rs.add(Reading.of(times[i], r[i]));
      tests.add(HoldTest.of("t" + k++, clamp, new GaugeLog("x", rs, 0)));
    }
    Job job = new Job("try", c, GaugeSpec.usual(), tests, Map.of(), List.of());
    for (int i = 0; i < 2; i++) {
      long t = System.nanoTime();
      new RankingService(cat).rank(job, 1, Progress.NONE);
      System.out.println((System.nanoTime() - t) / 1e9 + " s");
    }
  }
}
