package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas, held to the files by an independent validator. */
class SchemaTest {
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

  static Stream<Path> jobsAndExercises() throws IOException {
    try (Stream<Path> all = Files.walk(SCENARIOS)) {
      return all
          .filter(file -> file.toString().matches(".*\\.(job|exercise)\\.json"))
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("jobsAndExercises")
  void shippedJobsAndExercisesAreValid(Path file) throws IOException {
    String kind = file.toString().endsWith(".job.json") ? "job" : "exercise";
    Path published = SCENARIOS.resolve("schema").resolve(kind + ".schema.json");
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(JSON.readTree(published.toFile()));
    JsonNode read = JSON.readTree(file.toFile());
    assertTrue(schema.validate(read).isEmpty(), () -> schema.validate(read).toString());
    ((ObjectNode) read).put("colour", "red");
    assertFalse(schema.validate(read).isEmpty(), "an unknown entry is refused");
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
