package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The check of a repair as a user asks for it, on the shipped scenarios. */
class CheckCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;

  /** Simulated sound after its check valve was renewed; see the scenarios' README. */
  @Test
  void theRightPartHolds() throws IOException {
    Path json = folder.resolve("check.json");
    Console console =
        Console.run(
            "check",
            SCENARIOS.resolve("repaired-check-valve.job.json").toString(),
            "--json",
            json.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("No fault found"), console.out());
    assertTrue(console.out().contains("2025-04-26"), console.out());
    JsonNode check = new ObjectMapper().readTree(json.toFile());
    assertEquals("holds", check.get("verdict").get("kind").asText());
    assertEquals("passes", check.get("pass").get(0).get("outcome").asText());
  }

  /** A range from a hundred draws is off by a tenth, so it is taken with three seeds. */
  @Test
  void historyNarrowsTheRange() throws IOException {
    Path json = folder.resolve("check.json");
    double described = 0;
    double remembered = 0;
    for (String seed : List.of("1", "2", "3")) {
      String job = SCENARIOS.resolve("repaired-check-valve.job.json").toString();
      Console.run("check", job, "--seed", seed, "--json", json.toString());
      JsonNode check = new ObjectMapper().readTree(json.toFile());
      described += width(check.get("should_show").get(0));
      remembered += width(check.get("by_its_own_history").get(0));
    }
    assertTrue(remembered < described, remembered + " against " + described);
  }

  private static double width(JsonNode curve) {
    int last = curve.get("time_s").size() - 1;
    return curve.get("high_95_percent_bar").get(last).asDouble()
        - curve.get("low_5_percent_bar").get(last).asDouble();
  }

  /** Simulated with the check valve still leaking 0.25 mL/min at 2 bar. */
  @Test
  void theWrongPartDoesNot() throws IOException {
    Path json = folder.resolve("check.json");
    Console console =
        Console.run(
            "check",
            SCENARIOS.resolve("wrong-part-renewed.job.json").toString(),
            "--json",
            json.toString());
    assertTrue(console.out().contains("Still leaking"), console.out());
    JsonNode loss = new ObjectMapper().readTree(json.toFile()).get("loss_if_it_leaks");
    assertTrue(loss.get("low_5_percent").asDouble() < 0.25, loss.toString());
    assertTrue(loss.get("high_95_percent").asDouble() > 0.25, loss.toString());
  }
}
