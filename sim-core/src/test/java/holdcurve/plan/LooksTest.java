package holdcurve.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.file.JobReader;
import holdcurve.saying.PressureUnit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class LooksTest {
  private static final Path JOB =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", "acceptable-fall.job.json");

  /** A regulator of 2 bar; 1.9 bar are 27.6 psi by NIST Special Publication 811 (2008), B.8. */
  @Test
  void drawingOffStatesPressuresInTheReadersUnit() {
    Procedure drawing =
        new Looks(JobReader.read(JOB))
            .candidates(List.of()).stream()
                .map(CandidateTest::procedure)
                .filter(procedure -> procedure.id().equals("draw-off"))
                .findFirst()
                .orElseThrow();
    String words =
        "When the needle passes %s, let fuel off at the tee into the cylinder, in about 20 s, until"
            + " it shows %s.";
    assertEquals(words.formatted("1.90 bar", "1.50 bar"), drawing.steps().get(1).toString());
    assertEquals(
        words.formatted("27.6 psi", "21.8 psi"), drawing.steps().get(1).in(PressureUnit.PSI));
  }
}
