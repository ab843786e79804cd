package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Changed copies of the shipped circuits. */
class LooseEndsTest {
  private static final Path SHIPPED =
      Path.of(System.getProperty("holdcurve.root"), "scenarios/circuits");

  static List<Path> circuits() throws IOException {
    try (Stream<Path> files = Files.list(SHIPPED)) {
      return files.sorted().toList();
    }
  }

  private static String six() throws IOException {
    return Files.readString(SHIPPED.resolve("six-cylinder-return-line.circuit.json"));
  }

  private static String refusal(String text) {
    return assertThrows(InputException.class, () -> CircuitReader.read("six", text)).getMessage();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void shippedCircuitsHaveNone(Path file) {
    assertTrue(CircuitReader.read(file).parts().size() > 5);
  }

  @Test
  void aTankThatNobodyNamesIsRefusedWithThePointsThatShouldNameIt() throws IOException {
    String said = refusal(six().replace("\"id\": \"tank\"", "\"id\": \"petrol tank\""));
    assertEquals(
        List.of(
            "six, line 8, parts[1]: pump 'pump' draws from 'tank', and no tank is there; let it"
                + " lead to 'petrol tank'.",
            "six, line 20, parts[13]: regulator 'regulator' returns fuel to 'return-start' and on"
                + " to 'tank', and no tank is there; let it lead to 'petrol tank'.",
            "six, line 7, parts[0]: no part leads from or to tank 'petrol tank'; name 'petrol tank'"
                + " where the pump draws and where the return ends."),
        said.lines().toList());
  }

  /** What is replaced, by what, and a part of the sentence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "from": "tank"            | "from": "manifold"        | pump 'pump' draws from 'manifold', and no tank is there
          "to": "tank"              | "to": "manifold"          | returns fuel to 'return-start' and on to 'manifold'
          "to": "tank"              | "to": "tnak"              | pipe 'return-pipe' ends at 'tnak', which no other part names
          "id": "damper", "at": "rail" | "id": "damper", "at": "rial" | damper 'damper' ends at 'rial', which no other part names
          "id": "injectors", "at": "rail" | "id": "injectors", "at": "manifold" | injector 'injectors' sits at 'manifold', where there is no pressure
          { "kind": "damper", "id": "damper", "at": "rail" }, | { "kind": "hose", "id": "spare", "from": "rail", "to": "end" }, { "kind": "joint", "id": "cap", "at": "end" }, | hose 'spare' ends at 'end', where nothing closes it
          { "kind": "damper", "id": "damper", "at": "rail" }, | { "kind": "damper", "id": "a", "at": "island" }, { "kind": "damper", "id": "b", "at": "island" }, | damper 'a' sits at 'island', where no line leads
          """)
  void looseEndsAreNamed(String was, String now, String sentence) throws IOException {
    assertTrue(six().contains(was), was);
    String said = refusal(six().replace(was, now));
    assertTrue(said.contains(sentence), said);
  }

  /** Dead ends that cars have. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"gauge\", \"id\": \"gauge-tee\"",
        "\"damper\", \"id\": \"far-damper\"",
        "\"accumulator\", \"id\": \"far-accumulator\"",
        "\"cold-start-injector\", \"id\": \"far-injector\"",
        "\"injector\", \"id\": \"seventh\"",
        "\"rail\", \"id\": \"end-cap\""
      })
  void aLineMayEndAt(String part) throws IOException {
    String text =
        six()
            .replace(
                "{ \"kind\": \"damper\", \"id\": \"damper\", \"at\": \"rail\" },",
                "{ \"kind\": \"hose\", \"id\": \"branch\", \"from\": \"rail\", \"to\": \"far\" },"
                    + " { \"kind\": "
                    + part
                    + ", \"at\": \"far\" },");
    if (part.contains("gauge")) {
      text = text.replace("{ \"kind\": \"gauge\", \"id\": \"gauge-tee\", \"at\": \"rail\" },", "");
    }
    assertTrue(CircuitReader.read("six", text).parts().size() >= 16);
  }

  @Test
  void aLiftPumpMayStandBeforeTheMainPump() throws IOException {
    String text =
        six()
            .replace(
                "{ \"kind\": \"pump\", \"id\": \"pump\", \"from\": \"tank\"",
                "{ \"kind\": \"pump\", \"id\": \"lift\", \"from\": \"tank\", \"to\": \"lifted\" },"
                    + " { \"kind\": \"hose\", \"id\": \"suction\", \"from\": \"lifted\", \"to\":"
                    + " \"swirl\" }, { \"kind\": \"pump\", \"id\": \"pump\", \"from\": \"swirl\"");
    assertEquals(18, CircuitReader.read("six", text).parts().size());
  }

  /** Several slips in several parts, each with its line. */
  @Test
  void saysAllSlipsOfACircuit() throws IOException {
    String said =
        refusal(
            six()
                .replace("\"length_m\": 3,", "\"length_m\": \"3\",")
                .replace("\"volume_mL\": 90", "\"volume_L\": 0.09"));
    assertEquals(3, said.lines().count(), said);
    assertTrue(said.lines().allMatch(line -> line.startsWith("six, line ")), said);
  }
}
