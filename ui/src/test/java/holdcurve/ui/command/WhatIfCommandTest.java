package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes on the command line: what they do, and what is said of those that can't be made. */
class WhatIfCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final String CIRCUIT =
      SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();

  @TempDir private Path folder;

  private static void says(Console console, String sentence) {
    assertEquals(2, console.exitCode(), console.err());
    assertTrue(console.err().contains(sentence), console.err());
  }

  private static Console circuit(String... change) {
    String[] all = new String[change.length + 3];
    all[0] = "whatif";
    all[1] = "--circuit";
    all[2] = CIRCUIT;
    System.arraycopy(change, 0, all, 3, change.length);
    return Console.run(all);
  }

  @Test
  void aFaultAddedLowersTheHold() throws IOException {
    Path json = folder.resolve("whatif.json");
    Console console = circuit("--fault", "check-valve-seat=0.4", "--json", json.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("added: check valve leaks back to the tank (0.4 mL/min)"));
    JsonNode root = new ObjectMapper().readTree(json.toFile());
    assertEquals("holdcurve-whatif/1", root.get("format").asText());
    double before = root.at("/before/hold/middle_bar/16").asDouble();
    double after = root.at("/after/hold/middle_bar/16").asDouble();
    assertTrue(after < before - 0.3, before + " then " + after);
  }

  @Test
  void unknownPropertyPartAndRange() {
    says(circuit("--set", "feed-hose.lenght_m=2"), "a hose has no property 'lenght_m'");
    says(circuit("--repair", "nosuch"), "--repair nosuch: there is no such fault");
    says(circuit("--fault", "nosuch"), "--fault nosuch: there is no such fault");
    says(circuit("--set", "hose.length_m=2"), "there is no part 'hose' in this circuit");
    says(circuit("--set", "feed-hose.length_m=200"), "give a number from 0.01 to 20 m");
    says(circuit("--set", "feed-hose.kind=steel"), "use soft, fuel, braided, plastic");
    says(circuit("--replace", "carburettor"), "there is no part 'carburettor'");
    says(circuit("--fuel", "diesel"), "there is no such fuel");
    says(circuit("--temperature", "300"), "give -20 to 90");
  }

  @Test
  void nothingToAskAbout() {
    says(Console.run("whatif"), "name a job, or a circuit with --circuit");
    says(circuit("--parts", "prices.json"), "a circuit alone has no fault to repair");
  }

  @Test
  void pricesThatCannotBeUsed() throws IOException {
    String job = SCENARIOS.resolve("check-valve.job.json").toString();
    Path prices = folder.resolve("prices.csv");
    Files.writeString(prices, "name,part,price\nnew valve,valve,45 crowns\n");
    says(Console.run("whatif", job, "--parts", prices.toString()), "there is no part 'valve'");
    Files.writeString(prices, "name,part,price\nnew valve,check-valve,cheap\n");
    says(Console.run("whatif", job, "--parts", prices.toString()), "'cheap' is no price");
    Files.writeString(prices, "what,price\nnew valve,45\n");
    says(
        Console.run("whatif", job, "--parts", prices.toString()),
        "unknown entry 'what'; known here: cures");
  }
}
