package holdcurve.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.explain.FaultExplanation;
import holdcurve.physics.circuit.Circuit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ExplanationsTest {
  @Test
  void everyFaultIsExplainedInNarrowLines() {
    for (LeakFault fault : FaultCatalogue.load().faults()) {
      String text = FaultExplanation.of(fault, TestStand.CIRCUIT);
      assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
      assertTrue(text.startsWith(fault.name() + "\n"), text);
      assertEquals(fault.showsInHold(), text.contains("* with the fault"), text);
      fault.parameters().forEach(p -> assertTrue(text.contains(p.name()), text));
    }
  }

  /** 0.5 mL/min within a factor of 3 each standard deviation: 0.5 / 3^1.645 = 0.082, times 3.0. */
  @Test
  void checkValveIsExplained() {
    String text = FaultExplanation.of(new CheckValveSeatLeak(), TestStand.CIRCUIT);
    assertContains(text, "leak at 2 bar: 0.5 mL/min, 90 % range 0.082 to 3 mL/min");
    assertContains(text, "From feed start to pump outlet: 0.5 mL/min at 2 bar.");
    assertContains(text, "check valve. Look at the check valve.");
  }

  @Test
  void whatChangesAPartSaysHow() {
    String text = FaultExplanation.of(new CloggedFilter(), TestStand.CIRCUIT);
    assertContains(text, "pressure it takes at 1 L/min: 1.5 bar instead of 0.05");
    assertContains(text, "Only readings with the pump running show this");
  }

  /** Pump and filter hardly show while nothing is drawn; with the injectors open they do. */
  @Test
  void whatActsWhileFuelFlowsIsShownRunning() {
    String text = FaultExplanation.of(new CloggedFilter(), TestStand.CIRCUIT);
    Matcher open =
        Pattern.compile("held open as well: ([0-9.]+) bar instead of ([0-9.]+)\\.")
            .matcher(text.replaceAll("\\s+", " "));
    assertTrue(open.find(), text);
    double clogged = Double.parseDouble(open.group(1));
    assertTrue(clogged < Double.parseDouble(open.group(2)) - 0.2, text);
    assertContains(text, "a mist that any spark lights");
  }

  @Test
  void aReturnJointIsLookedAt() {
    String text = FaultExplanation.of(new ReturnJointLeak(), TestStand.CIRCUIT);
    assertContains(text, "0.3 mL/min at 0.1 bar");
    assertContains(text, "wet again after wiping");
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
