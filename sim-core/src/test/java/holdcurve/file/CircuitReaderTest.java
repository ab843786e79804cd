package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircuitReaderTest {
  @TempDir Path folder;

  private Circuit read(String entries) throws IOException {
    Path file = folder.resolve("x.circuit.json");
    Files.writeString(file, "{\"format\": \"holdcurve-circuit/1\", " + entries + "}");
    return CircuitReader.read(file);
  }

  @Test
  void fewWordsMakeAWholeCircuit() throws IOException {
    Circuit circuit =
        read("\"outline\": {\"cylinders\": 6, \"pipe_length_m\": 3, \"pipe_bore_mm\": 8}");
    assertEquals(6, circuit.part("injectors").value(Injector.COUNT));
    assertEquals(0.008, circuit.part("return-pipe").value(RigidPipe.BORE), 1e-12);
    assertTrue(circuit.part("feed-pipe").states(RigidPipe.LENGTH));
    assertFalse(circuit.part("regulator").states(Regulator.SET), "left to its default");
    assertTrue(circuit.parts().stream().noneMatch(part -> part.id().equals("damper")));
  }

  /** What is written, and a part of the sentence it gives. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "outline": 6                                       | outline: found 6 where an object { } belongs
          "outline": {}                                      | 'cylinders' is missing
          "outline": {"cylinders": 4.5}                      | outline.cylinders: 4.5 is no whole number
          "outline": {"cylinders": 40}                       | outline.cylinders: 40 is out of range
          "outline": {"cylinders": 4, "pipe_length_cm": 300} | outline.pipe_length_cm: unknown entry
          "outline": {"cylinders": 4, "set_bar": "2"}        | outline.set_bar: found "2" where a number belongs
          "outline": {"cylinders": 4, "damper": 1}           | outline.damper: found 1 where true or false belongs
          "outline": {"cylinders": 4}, "parts": []           | there are both 'parts' and an 'outline'
          "title": "nothing"                                 | 'parts' is missing
          """)
  void saysWhatIsWrong(String entries, String sentence) {
    String message = assertThrows(InputException.class, () -> read(entries)).getMessage();
    assertTrue(message.contains(sentence), message);
  }
}
