package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas, held to the files by an independent validator. */
class SchemaTest {
  @TempDir private Path folder;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path SCENARIOS =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios");

  static Stream<Path> circuits() throws IOException {
    try (Stream<Path> all = Files.walk(SCENARIOS)) {
      return all.filter(file -> file.toString().endsWith(".circuit.json")).toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void shippedCircuitsAreValid(Path file) throws IOException {
    assertEquals(List.of(), problems(JSON.readTree(file.toFile())));
  }

  static Stream<Path> otherFiles() throws IOException {
    try (Stream<Path> all = Files.walk(SCENARIOS)) {
      return all
          .filter(file -> file.toString().matches(".*\\.(job|exercise|bench)\\.json"))
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("otherFiles")
  void otherShippedFilesAreValid(Path file) throws IOException {
    String kind = file.toString().replaceAll(".*\\.([a-z]+)\\.json", "$1");
    JsonSchema schema = published(kind.equals("bench") ? "bench-sheet" : kind);
    JsonNode read = JSON.readTree(file.toFile());
    assertTrue(schema.validate(read).isEmpty(), () -> schema.validate(read).toString());
    ((ObjectNode) read).put("colour", "red");
    assertFalse(schema.validate(read).isEmpty(), "an unknown entry is refused");
  }

  private static JsonSchema published(String kind) throws IOException {
    Path file = SCENARIOS.resolve("schema").resolve(kind + ".schema.json");
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(JSON.readTree(file.toFile()));
  }

  /** A file for the schema and the reader, and what either refuses in it. */
  private void agrees(String kind, String text, List<String> broken, Consumer<Path> reader)
      throws IOException {
    Path file = folder.resolve("it." + kind + ".json");
    Files.writeString(file, text);
    reader.accept(file);
    JsonSchema schema = published(kind);
    assertTrue(schema.validate(JSON.readTree(text)).isEmpty());
    for (String change : broken) {
      String[] fromTo = change.split(" -> ", -1);
      String bad = text.replace(fromTo[0], fromTo[1]);
      assertFalse(schema.validate(JSON.readTree(bad)).isEmpty(), change);
      Files.writeString(file, bad);
      assertThrows(InputException.class, () -> reader.accept(file), change);
    }
  }

  @Test
  void dropTestsAreRefusedByBothOrNeither() throws IOException {
    agrees(
        "drop-test",
        """
        { "format": "holdcurve-drop-test/1", "title": "invented", "gauge_resolution_bar": 0.05,
          "pulses": 100, "pulse_ms": 3, "wait_s": 5, "idle_s": 60,
          "drawn_mL": 2, "drawn_from_bar": 2, "drawn_to_bar": 1.2,
          "readings": [ { "injector": 1, "before_bar": 2, "after_bar": 1.5 },
                        { "injector": "2", "before_bar": 2, "after_bar": 1.6 },
                        { "injector": "idle", "before_bar": 2, "after_bar": 1.95 } ] }
        """,
        List.of(
            "\"pulses\": 100, -> ",
            "\"drawn_to_bar\" -> \"drawn_bar\"",
            "\"pulse_ms\": 3 -> \"pulse_ms\": 3000",
            "\"injector\": 1, -> ",
            "drop-test/1 -> drop-test/2"),
        DropTestReader::read);
  }

  @Test
  void benchSheetsAreRefusedByBothOrNeither() throws IOException {
    agrees(
        "bench-sheet",
        """
        { "format": "holdcurve-bench-sheet/1", "serviced": "2026-11-10",
          "bench": { "pressure_bar": 3, "fluid": "n-heptane", "drop_time_min": 1 },
          "rated": { "static_mL_min": 180 },
          "injectors": [
            { "id": 1, "before": { "static_mL_min": 171, "drops": 2, "spray": 2,
              "dynamic": [ { "pulse_ms": 2.5, "mL_1000": 4.7 } ] } },
            { "id": "2", "after": { "static_g_min": 120 } } ] }
        """,
        List.of(
            "\"after\": -> \"later\":",
            "\"pressure_bar\": 3, -> ",
            "n-heptane -> water",
            "\"drops\": 2, -> \"drops\": 2.5,",
            "\"static_g_min\": 120 -> \"static_g_min\": 5",
            "2026-11-10 -> 10.11.2026x"),
        file -> BenchSheetReader.read(file, BenchLimits.shipped()));
  }

  private static List<String> problems(JsonNode circuit) {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(CircuitSchema.schema());
    return schema.validate(circuit).stream().map(Object::toString).toList();
  }

  /** The published file is the one that the kinds of part give; the right one stands in target. */
  @Test
  void publishedSchemaIsUpToDate() throws IOException {
    Path made = Path.of("target", "schema", "circuit.schema.json");
    Files.createDirectories(made.getParent());
    Files.writeString(made, CircuitSchema.schema().toPrettyString() + "\n");
    Path published = SCENARIOS.resolve("schema").resolve("circuit.schema.json");
    assertEquals(Files.readString(made), Files.readString(published), "copy " + made);
  }

  @Test
  void schemaRefusesWhatTheReaderRefuses() throws IOException {
    JsonNode sound = JSON.readTree(circuits().findFirst().orElseThrow().toFile());
    assertRefused(sound, circuit -> circuit.put("format", "holdcurve-circuit/9"));
    assertRefused(sound, circuit -> circuit.put("colour", "red"));
    assertRefused(sound, circuit -> circuit.remove(List.of("parts", "outline")));
    assertRefused(sound, circuit -> circuit.putArray("parts").addObject().put("kind", "engine"));
    assertRefused(sound, circuit -> circuit.putObject("outline").put("cylinders", 99));
    assertRefused(sound, circuit -> circuit.putObject("fluid").put("kind", "diesel"));
  }

  private static void assertRefused(JsonNode sound, Consumer<ObjectNode> change) {
    ObjectNode broken = sound.deepCopy();
    change.accept(broken);
    assertFalse(problems(broken).isEmpty(), broken.toString());
    assertTrue(problems(sound).isEmpty());
  }
}
