package holdcurve.physics.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FluidsTest {
  static Stream<Fluid> all() {
    return Fluids.ids().stream().map(id -> Fluids.byId(id).orElseThrow());
  }

  @Test
  void everyIdLeadsToTheFluidThatBearsIt() {
    assertEquals(List.of("petrol", "petrol-e5", "petrol-e10", "n-heptane"), Fluids.ids());
    assertEquals(Fluids.ids(), all().map(Fluid::id).toList());
    assertTrue(Fluids.byId("diesel").isEmpty());
  }

  @Test
  void aGradeIsKept() {
    Petrol winter = Petrol.of(90e3, 735);
    assertSame(winter, Fluids.byId("petrol", winter).orElseThrow());
    assertEquals(new EthanolBlend(winter, 0.05), Fluids.byId("petrol-e5", winter).orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyPropertyRefusesTemperaturesOutsideTheRange(Fluid fluid) {
    List<DoubleUnaryOperator> properties =
        List.of(
            fluid::density,
            t -> fluid.bulkModulusIsothermal(t, 3e5),
            t -> fluid.bulkModulusIsentropic(t, 3e5),
            fluid::thermalExpansion,
            fluid::viscosity,
            fluid::vapourPressure);
    for (double t : new double[] {20, 253, 363.2, Double.NaN}) {
      for (DoubleUnaryOperator property : properties) {
        assertThrows(IllegalArgumentException.class, () -> property.applyAsDouble(t));
      }
    }
  }

  @Test
  void theRefusalNamesValueUnitAndRange() {
    var refusal =
        assertThrows(IllegalArgumentException.class, () -> PureLiquid.nHeptane().viscosity(400));
    assertEquals(
        "temperature 400.00 K (126.85 °C) is outside 253.15 to 363.15 K (-20 to 90 °C), for which"
            + " the properties of n-heptane (test fluid) are known",
        refusal.getMessage());
  }

  @ParameterizedTest
  @MethodSource("all")
  void refusesNegativeAbsolutePressure(Fluid fluid) {
    assertThrows(IllegalArgumentException.class, () -> fluid.density(293.15, -1));
    assertThrows(IllegalArgumentException.class, () -> fluid.bulkModulusIsothermal(293.15, 2e7));
  }
}
