package holdcurve.advice.whatif;

import holdcurve.common.number.Celsius;
import holdcurve.physics.fluid.Fluid;
import java.util.Locale;

/**
 * Fuel that boils where no pressure keeps it liquid. A circuit that stood open would begin full of
 * vapour, which a pump fed with the same hot fuel doesn't press away; so build-up and running
 * pressures are asked a little below that temperature, and a note says so.
 */
final class Boiling {
  /** How far the vapour pressure stays below that of the air [Pa]. */
  private static final double MARGIN = 5e3;

  private static final double COLDEST = 240;
  private static final int HALVINGS = 40;

  private Boiling() {}

  /** The temperature, or the highest at which this fuel surely stays liquid in the open [K]. */
  static double keptBelow(Fluid fluid, double temperature) {
    if (isLiquid(fluid, temperature)) {
      return temperature;
    }
    double low = COLDEST;
    double high = temperature;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (isLiquid(fluid, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static boolean isLiquid(Fluid fluid, double temperature) {
    return fluid.vapourPressure(temperature) <= Fluid.ATMOSPHERE - MARGIN;
  }

  static String note(Fluid fluid, double temperature) {
    return String.format(
        Locale.ROOT,
        "At %.0f °C this fuel boils in the open: vapour in the lines would lengthen the build-up by"
            + " an amount that can't be foretold. Build-up and running pressures are those at %.0f"
            + " °C, the lines full of liquid.",
        Celsius.of(temperature),
        Celsius.of(keptBelow(fluid, temperature)));
  }
}
