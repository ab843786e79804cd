package holdcurve.advice.live;

import holdcurve.common.number.Interpolation;
import holdcurve.inference.answer.HoldCurve;

/**
 * What a sound circuit would show from a first reading on.
 *
 * @param band expected readings with the range of nine in ten, on the clock of the hold
 * @param leastLeak for each time of the band, the least leak at 2 bar that would by then have
 *     pulled the needle out of the band by more than the gauge explains [m³/s]; infinite where none
 *     would
 * @param margin what the gauge and the eye explain of a single reading [Pa]
 */
public record Expectation(HoldCurve band, double[] leastLeak, double margin) {
  /** The least leak that would have shown by a time [m³/s]. */
  public double leastLeakAt(double time) {
    double[] times = band.time();
    int last = 0;
    while (last + 1 < times.length && times[last + 1] <= time) {
      last++;
    }
    return leastLeak[last];
  }

  /**
   * How far a reading lies below the band, less what gauge and eye explain [Pa]; negative inside.
   */
  double below(double time, double pressure) {
    return at(band.low(), time) - margin - pressure;
  }

  /** How far a reading lies above the band, less what gauge and eye explain [Pa]. */
  double above(double time, double pressure) {
    return pressure - at(band.high(), time) - margin;
  }

  /** What a sound circuit would most likely show [Pa gauge]. */
  double middleAt(double time) {
    return at(band.middle(), time);
  }

  private double at(double[] values, double time) {
    return Interpolation.at(band.time(), values, time);
  }
}
