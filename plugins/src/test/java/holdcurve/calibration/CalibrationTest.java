package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.circuit.Circuit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.infer.Progress;
import holdcurve.infer.RankingService;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Rankings of generated jobs whose physics are not the fitted model's: is the right suspect first,
 * and do the percentages come true? A short run here; {@code -Pcalibrate} makes it hundreds of
 * cases.
 */
class CalibrationTest {
  private static final int CASES = Integer.getInteger("holdcurve.calibration.cases", 12);
  private static final long FIRST_SEED = Long.getLong("holdcurve.calibration.seed", 1000);

  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root"),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));

  /** Only what the generator breaks: suspects that never come true would spoil the count. */
  private static FaultCatalogue generated() {
    FaultCatalogue all = FaultCatalogue.load();
    return new FaultCatalogue(
        all.faults().stream().filter(f -> CaseGenerator.FAULTS.contains(f.id())).toList(),
        all.problems());
  }

  private static Scores score(List<Set<String>> clampings) {
    CaseGenerator generator = new CaseGenerator(CIRCUIT, clampings);
    RankingService ranker = new RankingService(generated());
    Scores scores = new Scores();
    for (int i = 0; i < CASES; i++) {
      GeneratedCase generated = generator.generate(FIRST_SEED + i);
      scores.add(generated, ranker.rank(generated.job(), 1, Progress.NONE));
    }
    System.out.println(clampings.size() + " tests a job: " + scores);
    return scores;
  }

  @Test
  void fourTestsFindTheRightGroup() {
    Scores scores =
        score(
            List.of(
                Set.of(),
                Set.of("feed-hose"),
                Set.of("return-hose"),
                Set.of("feed-hose", "return-hose")));
    assertTrue(scores.rightFirst() >= 0.75, scores.toString());
    assertTrue(scores.falseAccusations() <= 0.2, scores.toString());
  }

  @Test
  void oneTestIsModest() {
    Scores scores = score(List.of(Set.of()));
    assertTrue(scores.falseAccusations() <= 0.2, scores.toString());
  }
}
