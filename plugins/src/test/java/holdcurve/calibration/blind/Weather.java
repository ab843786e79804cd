package holdcurve.calibration.blind;

import java.util.function.DoubleUnaryOperator;

/** What the temperature of trapped fuel does in a hold: a line, a bend, a swing, or a hot soak. */
final class Weather {
  private Weather() {}

  /** Change since the pump stopped [K], by time [s]. */
  static DoubleUnaryOperator draw(Draw draw) {
    double size = draw.normal(0.45);
    switch (draw.weighted(0.35, 0.35, 0.2, 0.1)) {
      case 0:
        return t -> size * t / 600;
      case 1:
        double constant = draw.between(150, 2500);
        double whole = size / -Math.expm1(-600 / constant);
        return t -> whole * -Math.expm1(-t / constant);
      case 2:
        double period = draw.between(400, 2000);
        double phase = draw.between(0, 2 * Math.PI);
        return t -> 0.6 * size * (Math.sin(2 * Math.PI * t / period + phase) - Math.sin(phase));
      default:
        double rise = draw.between(0.5, 2.5);
        double up = draw.between(200, 600);
        return t -> rise * t / up * Math.exp(1 - t / up);
    }
  }
}
