package holdcurve.inference.posterior;

import holdcurve.common.message.Message;
import holdcurve.inference.likelihood.Latents.Shared;
import java.util.Locale;

/** What it means for a circuit when an unknown lies away from where it usually does. */
final class PriorPenalty {
  private PriorPenalty() {}

  /**
   * @param u in standard deviations of what is usual [-]
   * @return something that can be needed, such as "hoses that give unusually much"
   */
  static String of(Shared which, double u) {
    switch (which) {
      case COMPLIANCE:
        return "hoses that give " + much(u);
      case AIR:
        return much(u) + " air in the gauge hose";
      case CREEP:
        return "hoses that go on stretching " + much(u);
      case CREEP_TIME:
        return "hoses that stretch " + degree(u) + (u > 0 ? " slowly" : " quickly");
      case QUICK_CREEP:
        return "hoses that stretch " + much(u) + " in the first seconds";
      case CHECK_VALVE_WEEP:
        return "a check valve that weeps " + much(u);
      case REGULATOR_WEEP:
        return "a regulator that weeps " + much(u);
      case INJECTOR_WEEP:
        return "injectors that weep " + much(u);
      case SET_PRESSURE:
        return "a set pressure " + degree(u) + high(u) + " for what is stated";
      case RESEAT_DROP:
        return "a regulator that shuts " + degree(u) + high(-u);
      case FEED_CLAMP_PLACE:
        return "a feed clamp set " + degree(u) + (u > 0 ? " far from" : " close to") + " the pump";
      case OTHER_CLAMP_PLACE:
        return "a return clamp set "
            + degree(u)
            + (u > 0 ? " far from" : " close to")
            + " the pump";
      case DAMPER_SIZE:
        return "a damper that takes up " + much(u);
      case DAMPER_PRESSURE:
        return "a damper that works at " + degree(u) + (u > 0 ? " high" : " low") + " pressure";
      case DAMPER_WIDTH:
        return "a damper that works over " + much(u) + " of the pressure";
      case DAMPER_STOPS:
        return "a damper that meets its stops " + degree(u) + (u > 0 ? " hard" : " softly");
      case LAW_BEND:
        return "a leak that follows the pressure " + degree(u) + (u > 0 ? " steeply" : " weakly");
      case GAUGE_LAG:
        return "a needle that follows " + degree(u) + (u > 0 ? " slowly" : " quickly");
      default:
        return which.name().toLowerCase(Locale.ROOT).replace('_', ' ')
            + " at "
            + degree(u)
            + high(u);
    }
  }

  /**
   * A gauge's own error, as something that can be needed.
   *
   * @param error its standard deviation [Pa]
   */
  static Message gauge(double u, double error) {
    return Message.of("a gauge that reads %s%s", Message.pressure(Math.abs(u) * error), high(u));
  }

  /** "unusually much". */
  static String much(double u) {
    return degree(u) + (u > 0 ? " much" : " little");
  }

  static String high(double u) {
    return u > 0 ? " high" : " low";
  }

  /** How far from usual. */
  static String degree(double u) {
    double away = Math.abs(u);
    return away < 1 ? "fairly" : away < 2 ? "rather" : away < 3 ? "unusually" : "very unusually";
  }
}
