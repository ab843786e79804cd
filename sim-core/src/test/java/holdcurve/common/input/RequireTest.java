package holdcurve.common.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RequireTest {
  @Test
  void goodValuesPassThrough() {
    assertEquals(2, Require.positive(2, "bore", "m"));
    assertEquals(0, Require.notNegative(0, "length", "m"));
    assertEquals(-1, Require.finite(-1, "pressure", "Pa"));
    assertEquals(1, Require.within(1, 0, 1, "share", "-"));
  }

  @Test
  void badValuesAreNamedWithUnitAndLimit() {
    var zero = assertThrows(IllegalArgumentException.class, () -> Require.positive(0, "bore", "m"));
    assertEquals("bore is 0.0 [m] but must be above 0", zero.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Require.notNegative(-1, "length", "m"));
    assertThrows(
        IllegalArgumentException.class, () -> Require.positive(Double.POSITIVE_INFINITY, "x", "-"));
    assertThrows(IllegalArgumentException.class, () -> Require.finite(Double.NaN, "x", "-"));
    assertThrows(IllegalArgumentException.class, () -> Require.within(2, 0, 1, "x", "-"));
  }
}
