package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.advice.whatif.PriceList;
import holdcurve.physics.circuit.Circuit;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceListWriterTest {
  private static final Path SCENARIOS =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios");
  private static final Set<String> FAULTS =
      Set.of("check-valve-seat", "pump-relief", "feed-side-joint", "rail-side-joint", "gauge-tee");

  @TempDir Path folder;

  @Test
  void whatIsWrittenIsReadAsTheSameList() {
    Circuit circuit =
        CircuitReader.read(SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json"));
    PriceList list = PriceListReader.read(SCENARIOS.resolve("prices.json"), circuit, FAULTS);
    Path copy = folder.resolve("copy.json");
    PriceListWriter.write(copy, list);
    assertEquals(list, PriceListReader.read(copy, circuit, FAULTS));
  }
}
