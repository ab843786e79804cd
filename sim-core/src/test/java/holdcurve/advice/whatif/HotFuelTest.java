package holdcurve.advice.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.CircuitReader;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.limit.PassLimit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class HotFuelTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root"),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final List<HypothesisPosterior> SOUND =
      List.of(
          new HypothesisPosterior(
              new Hypothesis(List.of(), 1),
              1,
              PosteriorDraw.before(CIRCUIT, GaugeSpec.usual(), 1, 40)));

  private static Comparison at(double celsius) {
    return WhatIf.quick(SOUND, PassLimit::usual, 1)
        .compare("invented", CIRCUIT, Changes.fuelTemperature(celsius + 273.15));
  }

  @Test
  void theRegulatorSetsThePressureOfHotFuelToo() {
    Comparison hot = at(65);
    assertEquals(hot.before().primed().middle(), hot.after().primed().middle(), 0.05e5);
    assertEquals(hot.before().idle().middle(), hot.after().idle().middle(), 0.05e5);
    assertTrue(hot.after().buildUp().middle() < 3, () -> hot.after().buildUp().toString());
    assertEquals(1, hot.notes().size());
    assertTrue(hot.notes().get(0).startsWith("At 65 °C this fuel boils in the open"));
  }

  @Test
  void coolFuelNeedsNoNote() {
    assertEquals(List.of(), at(40).notes());
  }

  /** 60 kPa at 37.8 °C is what the default grade is defined by: ASTM D323's reference point. */
  @Test
  void whatIsLiquidIsLeftAlone() {
    Fluid petrol = Fluids.byId("petrol").orElseThrow();
    assertEquals(310.95, Boiling.keptBelow(petrol, 310.95));
    double kept = Boiling.keptBelow(petrol, 360);
    assertTrue(kept > 310.95 && kept < 345, () -> "" + kept);
    assertTrue(petrol.vapourPressure(kept) < Fluid.ATMOSPHERE);
  }
}
