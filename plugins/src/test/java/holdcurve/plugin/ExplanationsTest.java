package holdcurve.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.circuit.Circuit;
import holdcurve.explain.FaultExplanation;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import org.junit.jupiter.api.Test;

class ExplanationsTest {
  @Test
  void everyFaultIsExplainedInNarrowLines() {
    for (LeakFault fault : FaultCatalogue.load().faults()) {
      String text = FaultExplanation.of(fault, TestStand.CIRCUIT);
      assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
      assertTrue(text.startsWith(fault.name() + " (" + fault.id() + ")\n"), text);
      assertEquals(fault.showsInHold(), text.contains("* with the fault"), text);
      fault.parameters().forEach(p -> assertTrue(text.contains(p.name()), text));
    }
  }

  /** 0.5 mL/min within a factor of 3 each standard deviation: 0.5 / 3^1.645 = 0.082, times 3.0. */
  @Test
  void checkValveIsExplained() {
    String text = FaultExplanation.of(new CheckValveSeatLeak(), TestStand.CIRCUIT);
    assertContains(text, "leak at 2 bar: 0.5 mL/min, nine times in ten 0.082 to 3 mL/min");
    assertContains(text, "From feed-start to pump-outlet: 0.5 mL/min at 2 bar.");
    assertContains(text, "check-valve: look at check-valve");
  }

  @Test
  void whatChangesAPartSaysHow() {
    String text = FaultExplanation.of(new CloggedFilter(), TestStand.CIRCUIT);
    assertContains(text, "pressure it takes at 1 L/min: 1.5 bar instead of 0.05");
    assertContains(text, "A hold can't speak for it");
  }

  @Test
  void aFaultWithoutAPlaceSaysSo() {
    Circuit bare =
        new Circuit("bare", TestStand.CIRCUIT.fluid(), TestStand.CIRCUIT.parts().subList(0, 2));
    assertContains(FaultExplanation.of(new InjectorTipLeak(), bare), "Nowhere");
  }

  private static void assertContains(String text, String words) {
    assertTrue(text.replaceAll("\\s+", " ").contains(words), text);
  }
}
