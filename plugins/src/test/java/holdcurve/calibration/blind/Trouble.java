package holdcurve.calibration.blind;

import holdcurve.calibration.blind.Leak.Place;
import java.util.List;

/**
 * A fault by the name that the catalogue gives it.
 *
 * @param id of the fault
 * @param size flow at 2 bar [m³/s]; for a regulator that shuts low the drop [Pa]
 * @param leak what it lets past
 * @param variation of its size from hold to hold, standard deviation of the logarithm [-]
 * @param tornStroke stroke that a damper has lost [-]
 */
record Trouble(String id, double size, Leak leak, double variation, double tornStroke) {
  private static final double ML_MIN = 1e-6 / 60;

  /** Faults that a hold can show, and how often each is put in: between even and the priors'. */
  private static final List<String> IDS =
      List.of(
          "check-valve-seat",
          "injector-tip",
          "regulator-seat",
          "regulator-low-reseat",
          "feed-side-joint",
          "rail-side-joint",
          "gauge-tee",
          "cold-start-injector",
          "regulator-diaphragm",
          "damper-diaphragm",
          "pump-relief");

  private static final double[] WEIGHTS = {1.3, 1, 1, 0.8, 0.8, 0.7, 0.5, 0.4, 0.4, 0.3, 0.25};

  static Trouble draw(Draw draw, Car car) {
    String id;
    do {
      id = IDS.get(draw.weighted(WEIGHTS));
    } while (id.equals("damper-diaphragm") && !car.hasDamper()
        || id.equals("cold-start-injector") && !car.hasColdStart());
    return of(id, draw, car);
  }

  private static Trouble of(String id, Draw draw, Car car) {
    if (id.equals("regulator-low-reseat")) {
      double drop = Math.min(0.6 * car.set(), 0.35e5 * draw.factor(0.5));
      double shut = car.set() - drop;
      double bleed = 30 * ML_MIN * draw.factor(0.8);
      Leak leak =
          new Leak(Place.RAIL, Place.RETURN, bleed, shut + 1e5, draw.between(0.6, 1.1), shut, true);
      return new Trouble(id, drop, leak, draw.between(0, 0.1), 0);
    }
    double size = Math.min(4, Math.max(0.06, 0.4 * draw.factor(0.9))) * ML_MIN;
    boolean joint = id.endsWith("joint") || id.equals("gauge-tee");
    double exponent = joint ? draw.between(0.5, 1.15) : draw.between(0.5, 1.3);
    double opening = joint && draw.chance(0.4) ? draw.between(0.1e5, 0.8e5) : 0;
    Leak leak = Leak.of(from(id, car), to(id), size, exponent, opening);
    double variation = joint ? draw.between(0, 0.15) : draw.between(0.05, 0.35);
    double torn = id.equals("damper-diaphragm") ? draw.between(0, 0.8) : 0;
    return new Trouble(id, size, leak, variation, torn);
  }

  private static Place from(String id, Car car) {
    return switch (id) {
      case "check-valve-seat", "feed-side-joint", "pump-relief" -> Place.FEED;
      case "gauge-tee" -> car.gauge();
      default -> Place.RAIL;
    };
  }

  private static Place to(String id) {
    return id.equals("regulator-seat") ? Place.RETURN : Place.OUTSIDE;
  }

  /** What it lets past in one hold. */
  Leak inOneHold(Draw draw) {
    double factor = draw.factor(variation);
    return isLeak() ? leak.times(factor) : leak.openingAt(leak.opening() + size * (1 - factor));
  }

  boolean isLeak() {
    return !id.equals("regulator-low-reseat");
  }
}
