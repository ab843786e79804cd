package holdcurve.ui.schematic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.CircuitReader;
import holdcurve.ui.schematic.Drawing.Placed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.shape.SVGPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SymbolsTest {
  private static final Path CIRCUITS =
      Path.of(System.getProperty("holdcurve.root"), "scenarios", "circuits");

  static List<Path> circuits() throws IOException {
    try (Stream<Path> files = Files.list(CIRCUITS)) {
      return files.sorted().toList();
    }
  }

  private static Bounds bounds(Mark mark) {
    SVGPath path = new SVGPath();
    path.setContent(mark.path());
    return path.getLayoutBounds();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everySymbolReachesAsFarAsItSays(Path file) {
    for (Placed placed : CircuitLayout.of(CircuitReader.read(file)).parts()) {
      Symbol symbol = Symbols.of(placed);
      double top = 0;
      double bottom = 0;
      for (Mark mark : symbol.marks()) {
        top = Math.min(top, bounds(mark).getMinY());
        bottom = Math.max(bottom, bounds(mark).getMaxY());
      }
      assertEquals(symbol.top(), top, 1.5, placed::toString);
      assertEquals(symbol.bottom(), bottom, 1.5, placed::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void noTwoKindsLookAlike(Path file) {
    Map<List<Mark>, String> seen = new HashMap<>();
    for (Placed placed : CircuitLayout.of(CircuitReader.read(file)).parts()) {
      String kind = placed.part().kind().id();
      String before = seen.putIfAbsent(Symbols.of(placed).marks(), kind);
      assertTrue(before == null || before.equals(kind), kind + " and " + before);
    }
  }

  @Test
  void namesBreakAtSpacesOnly() {
    assertEquals(List.of("cold start", "injector"), PartLabel.wrapped("cold start injector", 11));
    assertEquals(List.of("injectors"), PartLabel.wrapped("injectors", 4));
  }
}
