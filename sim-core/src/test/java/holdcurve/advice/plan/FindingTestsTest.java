package holdcurve.advice.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.fault.Site;
import holdcurve.file.JobReader;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.ranking.InventedJob;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class FindingTestsTest {
  private static final Path JOB =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", "acceptable-fall.job.json");

  /** A regulator of 2 bar; 1.9 bar are 27.6 psi by NIST Special Publication 811 (2008), B.8. */
  @Test
  void drawingOffStatesPressuresInTheReadersUnit() {
    Procedure drawing =
        new FindingTests(JobReader.read(JOB))
            .candidates(List.of()).stream()
                .map(CandidateTest::procedure)
                .filter(procedure -> procedure.id().equals("draw-off"))
                .findFirst()
                .orElseThrow();
    String words =
        "At %s, let fuel into the cylinder through the valve or cracked union. Take about 20 s,"
            + " and shut it at %s.";
    assertEquals(words.formatted("1.90 bar", "1.50 bar"), drawing.steps().get(1).toString());
    assertEquals(
        words.formatted("27.6 psi", "21.8 psi"), drawing.steps().get(1).in(PressureUnit.PSI));
  }

  /** Each step of each test that can be planned, and the cautions that are read before it. */
  @Test
  void everyStepHasItsCautionBefore() {
    List<CandidateTest> tests = Candidates.of(JobReader.read(JOB), List.of(joint()));
    Set<String> seen = new TreeSet<>();
    for (CandidateTest test : tests) {
      Procedure procedure = test.procedure();
      String cautions = String.join(" ", procedure.cautions());
      for (Message step : procedure.steps()) {
        NEEDS.forEach(
            (words, caution) -> {
              if (step.toString().contains(words)) {
                seen.add(words);
                assertTrue(cautions.contains(caution.text()), procedure.id() + ": " + step);
              }
            });
      }
      assertTrue(cautions.contains(Caution.PETROL.text()), procedure.id());
      assertTrue(cautions.contains(Caution.LOCAL_CODES.text()), procedure.id());
    }
    assertEquals(NEEDS.keySet(), seen, "steps that no test has");
  }

  private static final Map<String, Caution> NEEDS =
      Map.of(
          "Bridge the pump relay", Caution.BRIDGED_PUMP,
          "clamp ", Caution.CLAMPS,
          ", clamp ", Caution.DEAD_HEAD,
          "Go round them all", Caution.COLD_LAMP,
          "thin hose", Caution.COLD_LAMP,
          "secure", Caution.INJECTORS_HELD,
          "Count drops", Caution.NOTHING_FIRES,
          "Relieve the pressure", Caution.RELIEVE,
          "let fuel into", Caution.DRAW_OFF);

  private static Hypothesis joint() {
    return new Hypothesis(
        List.of(
            new Hypothesis.Member(
                new InventedJob.Drip(),
                new Site("rail", "at the rail", "rail", List.of("ring-line", "damper")))),
        1);
  }
}
