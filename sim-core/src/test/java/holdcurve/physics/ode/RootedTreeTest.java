package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RootedTreeTest {

  /** Numbers of rooted trees: OEIS A000081. */
  @ParameterizedTest
  @CsvSource({"1, 1", "2, 1", "3, 2", "4, 4", "5, 9", "6, 20", "7, 48"})
  void countsAreTheKnownOnes(int order, int count) {
    assertEquals(count, RootedTree.ofOrder(order).size());
    assertEquals(count, new HashSet<>(RootedTree.ofOrder(order)).size());
  }
}
