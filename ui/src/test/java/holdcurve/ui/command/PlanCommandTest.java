package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
  private static final Path JOB =
      Path.of(System.getProperty("holdcurve.root"), "scenarios", "sound-after-rebuild.job.json");

  @TempDir private Path folder;

  /** Outcomes exclude each other, so their chances can't add up to more than certainty. */
  @Test
  void theChancesOfTheOutcomesOfATestAddUpToOneAtMost() throws IOException {
    Path file = folder.resolve("plan.json");
    Console console = Console.run("plan", JOB.toString(), "--json", file.toString());
    assertEquals(0, console.exitCode(), console.err());
    JsonNode tests = new ObjectMapper().readTree(file.toFile()).path("tests");
    assertTrue(tests.size() > 0);
    for (JsonNode test : tests) {
      double sum =
          StreamSupport.stream(test.path("outcomes").spliterator(), false)
              .mapToDouble(outcome -> outcome.path("probability").asDouble(Double.NaN))
              .sum();
      assertTrue(sum <= 1.001, () -> test.path("name") + ": " + sum);
    }
  }
}
