package holdcurve.plugin;

import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.RETURN;
import static holdcurve.plugin.TestStand.bar;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.hold;
import static holdcurve.plugin.TestStand.sound;
import static holdcurve.plugin.TestStand.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** A quick first fall, then it stands. */
class RegulatorLowReseatTest {

  private final Condition low = with(new RegulatorLowReseat(), bar(0.4), 5e-12);

  /** 5e-12 m³/(s·Pa) on some 2e-11 m³/Pa: a time constant of seconds. */
  @Test
  void firstFallIsQuick() {
    double[] readings = hold(low, NO_CLAMP);
    assertEquals(1.6, readings[6], 0.1);
    assertTrue(readings[0] - readings[3] > 5 * (readings[3] - readings[6]));
  }

  @Test
  void thenItHoldsAsASoundOne() {
    double[] readings = hold(low, NO_CLAMP);
    double[] sound = hold(sound(), NO_CLAMP);
    assertTrue(readings[12] - readings[60] <= sound[12] - sound[60]);
  }

  @Test
  void anEarlyReturnClampCutsItShort() {
    assertTrue(fall(low, RETURN) < fall(low, NO_CLAMP));
  }
}
