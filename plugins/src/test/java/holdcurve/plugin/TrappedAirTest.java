package holdcurve.plugin;

import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.running;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import org.junit.jupiter.api.Test;

/** A spring: slower up, slower down, nothing that a softer hose would not do. */
class TrappedAirTest {

  private final Condition airy = with(new TrappedAir(), 8e-6);

  @Test
  void buildsUpMoreSlowly() {
    double[] soon = {0.05};
    assertTrue(running(airy, 0, soon)[0] < running(sound(), 0, soon)[0] - 0.2);
  }

  @Test
  void fallsMoreSlowly() {
    assertTrue(fall(airy, NO_CLAMP) < 0.8 * fall(sound(), NO_CLAMP));
  }

  /**
   * So a hold alone can't speak for it: hoses that give more draw the same curve, as far as a
   * needle read to 0.02 bar tells.
   */
  @Test
  void softerHosesDoTheSame() {
    assertFalse(new TrappedAir().showsInHold());
    Circuit soft =
        CIRCUIT.map(
            part ->
                part.kind() == Hose.KIND
                    ? part.with(Hose.COMPLIANCE, 2.5 * part.value(Hose.COMPLIANCE))
                        .with(Hose.QUICK_CREEP, part.value(Hose.QUICK_CREEP) / 2.5)
                        .with(Hose.SLOW_CREEP, part.value(Hose.SLOW_CREEP) / 2.5)
                    : part);
    assertArrayEquals(hold(Condition.sound(soft), NO_CLAMP), hold(airy, NO_CLAMP), 0.02);
  }

  @Test
  void addsToTheAirInTheGaugeHose() {
    double usual = CIRCUIT.part("gauge-tee").value(Gauge.AIR);
    assertEquals(usual + 8e-6, airy.circuit().part("gauge-tee").value(Gauge.AIR), 1e-12);
  }
}
