package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped drop tests: number 3 was simulated with 84 % of what it should pass. */
class DropTestCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;

  private static Console judge(String name, String... more) {
    String[] args = new String[2 + more.length];
    args[0] = "drop-test";
    args[1] = SCENARIOS.resolve("bench").resolve(name).toString();
    System.arraycopy(more, 0, args, 2, more.length);
    Console console = Console.run(args);
    assertEquals(0, console.exitCode(), console.err());
    return console;
  }

  @Test
  void sixTimesFindTheLowOne() throws IOException {
    Path json = folder.resolve("drops.json");
    String circuit = SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();
    String out =
        judge("drops-six-times.csv", "--circuit", circuit, "--json", json.toString()).out();
    assertTrue(out.contains("Injector 3 is low"), out);
    assertTrue(out.lines().allMatch(line -> line.length() < 80), out);
    JsonNode lowest = new ObjectMapper().readTree(json.toFile()).at("/injectors/0");
    assertEquals("3", lowest.get("id").asText());
    assertTrue(lowest.at("/out_of_line_percent/low_5_percent").asDouble() < -15, out);
    assertTrue(lowest.has("flow_mL_min"));
  }

  @Test
  void twoTimesFromOnePressureSettleLittle() {
    String out = judge("drops-two-times.csv").out();
    assertTrue(out.contains("Not settled"), out);
    assertTrue(out.replaceAll("\\s+", " ").matches(".* Do \\d+ more\\. .*"), out);
    assertTrue(out.contains("Start from a slightly different pressure"), out);
    assertTrue(out.contains("Without a circuit only comparisons"), out);
  }
}
