package holdcurve.calibration.blind;

import holdcurve.calibration.blind.Leak.Place;

/**
 * What of a car matters while its pump runs.
 *
 * @param rail zone of the rail, with what air is trapped there
 * @param opening pressure at which the regulator begins to open [Pa]
 * @param friction by which it opens later and shuts earlier [Pa]
 * @param gain flow of the regulator over its lift and the root of the pressure across it
 */
record RunUpCar(
    Zone rail,
    Delivery pump,
    Resistance filter,
    Resistance back,
    double opening,
    double friction,
    double gain) {
  private static final double LITRE_MIN = 1e-3 / 60;

  /**
   * A pump: free flow · (1 − (p/stall)^exponent), after it has come up to speed.
   *
   * @param free flow against no pressure [m³/s]
   * @param stall pressure at which it delivers nothing [Pa]
   * @param exponent of its curve [-]
   * @param crack pressure that its check valve takes [Pa]
   * @param speedUp time constant [s]
   */
  record Delivery(double free, double stall, double exponent, double crack, double speedUp) {
    double flow(double pressure, double since) {
      double against = Math.max(0, pressure + crack) / stall;
      double left = Math.max(0, 1 - Math.pow(against, exponent));
      return free * left * -Math.expm1(-since / speedUp);
    }
  }

  /**
   * A pressure drop of two terms, one that goes with the flow and one with its square.
   *
   * @param linear [Pa·s/m³]
   * @param square [Pa·s²/m⁶]
   */
  record Resistance(double linear, double square) {
    /** So much pressure at 1 L/min, that share of it turbulent. */
    static Resistance at(double pressure, double turbulent) {
      return new Resistance(
          pressure * (1 - turbulent) / LITRE_MIN, pressure * turbulent / (LITRE_MIN * LITRE_MIN));
    }

    double flow(double difference) {
      double size = Math.abs(difference);
      double root = Math.sqrt(linear * linear + 4 * square * size);
      return Math.signum(difference) * 2 * size / (linear + root);
    }
  }

  /** What goes wrong in a run-up. */
  enum Kind {
    SOUND,
    WEAK_PUMP,
    BLOCKED_RETURN,
    TRAPPED_AIR,
    LOW_REGULATOR
  }

  static RunUpCar draw(Draw draw, Car car, Kind kind) {
    double free = draw.between(1.3, 2.6) * LITRE_MIN;
    double stall = draw.between(4.5e5, 9e5);
    double exponent = draw.between(0.8, 2.5);
    double crack = draw.between(0.03e5, 0.2e5);
    double speedUp = draw.between(0.05, 0.3);
    double delivery = new Delivery(free, stall, exponent, crack, speedUp).flow(car.set(), 100);
    double rise = draw.between(0.1e5, 0.5e5);
    double opening = car.set();
    double gain = delivery / (rise * Math.sqrt(car.set()));
    Resistance back = Resistance.at(draw.between(0.01e5, 0.06e5), draw.between(0.3, 1));
    Zone rail = car.zone(Place.RAIL);
    switch (kind) {
      case WEAK_PUMP:
        free *= draw.between(0.1, 0.6);
        stall = crack + car.set() * draw.between(0.45, 0.85);
        break;
      case BLOCKED_RETURN:
        double reach = 0.7 * (stall - crack - car.set());
        double backedUp = car.set() + Math.min(draw.between(0.8e5, 2e5), reach);
        double left = new Delivery(free, stall, exponent, crack, speedUp).flow(backedUp, 100);
        back = Resistance.at(backedUp / Math.pow(left / LITRE_MIN, 2), 0.98);
        break;
      case TRAPPED_AIR:
        double air = draw.between(70e-6, 200e-6);
        rail =
            new Zone(
                rail.liquid(),
                rail.hose(),
                rail.stiffening(),
                rail.rigid(),
                rail.air() + air,
                rail.polytropic(),
                rail.damper());
        break;
      default:
        break;
    }
    return new RunUpCar(
        rail,
        new Delivery(free, stall, exponent, crack, speedUp),
        Resistance.at(draw.between(0.02e5, 0.12e5), draw.between(0, 1)),
        back,
        opening,
        draw.between(0, 0.015e5),
        gain);
  }

  /** The same with a regulator whose spring is tired. */
  RunUpCar openingAt(double pressure) {
    return new RunUpCar(rail, pump, filter, back, pressure, friction, gain);
  }
}
