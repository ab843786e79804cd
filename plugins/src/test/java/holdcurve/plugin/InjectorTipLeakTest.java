package holdcurve.plugin;

import static holdcurve.plugin.TestStand.BOTH;
import static holdcurve.plugin.TestStand.CIRCUIT;
import static holdcurve.plugin.TestStand.FEED;
import static holdcurve.plugin.TestStand.NO_CLAMP;
import static holdcurve.plugin.TestStand.exponent;
import static holdcurve.plugin.TestStand.fall;
import static holdcurve.plugin.TestStand.law;
import static holdcurve.plugin.TestStand.median;
import static holdcurve.plugin.TestStand.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import org.junit.jupiter.api.Test;

/** Drips on the rail: no clamp stops it, and no opening pressure either. */
class InjectorTipLeakTest {

  private final Condition dripping = median(new InjectorTipLeak());

  @Test
  void noClampStopsIt() {
    double whole = fall(dripping, NO_CLAMP);
    assertTrue(fall(dripping, FEED) > whole, "the clamped-off feed no longer helps to hold");
    assertTrue(fall(dripping, BOTH) > whole);
    assertTrue(whole > 3 * fall(sound(), NO_CLAMP));
  }

  /** Between free outflow (1/2) and laminar flow (1), as any short hole. */
  @Test
  void growsSlowerThanThePressure() {
    double exponent = exponent(law(dripping));
    assertTrue(exponent > 0.5 && exponent < 1, () -> "exponent " + exponent);
  }

  @Test
  void endsInTheIntake() {
    assertEquals(Circuit.MANIFOLD, dripping.leaks().get(0).to());
  }

  @Test
  void saysThatOneOfSeveralMayDrip() {
    Site site = new InjectorTipLeak().sites(CIRCUIT).get(0);
    assertEquals("one or several of the injectors", site.where());
  }
}
