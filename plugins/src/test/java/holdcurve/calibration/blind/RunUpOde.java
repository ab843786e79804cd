package holdcurve.calibration.blind;

import holdcurve.calibration.blind.Leak.Place;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Volume balances of feed line, rail and return line from before the pump is switched on to the end
 * of the hold, by implicit Euler. Its laws are not the program's: the pump's curve has any
 * exponent, the regulator's opening grows with its lift and passes fuel like an orifice, it sticks
 * a little on either side, the return is part turbulent and part laminar.
 */
final class RunUpOde {
  private static final int ZONES = 3;

  /** Pivots are compliances, far below what is usually called singular [m³/Pa]. */
  private static final double TINY = 1e-25;

  private static final double LEAST_STEP = 1e-3;
  private static final double MOST_STEP = 0.5;

  /** Over which valves are rounded as they shut [Pa]. */
  private static final double EVEN = 75;

  private static final double FARTHEST = 3e4;

  private final Car car;
  private final RunUpCar plumbing;
  private final Leak leak;
  private final Zone[] zones;
  private final double[][] crept;
  private final double[] p = new double[ZONES];
  private double time;
  private double switched;
  private boolean pump;
  private boolean open;

  /**
   * @param leak of the fault, or null
   */
  RunUpOde(Car car, RunUpCar plumbing, Leak leak) {
    this.car = car;
    this.plumbing = plumbing;
    this.leak = leak;
    zones = new Zone[] {car.zone(Place.FEED), plumbing.rail(), car.zone(Place.RETURN)};
    crept = HoldOde.rested(car);
  }

  /**
   * Pressure at the gauge every tenth of a second [Pa].
   *
   * @param left pressure that was left before [Pa]
   * @param on when the pump is switched on, from the beginning [s]
   * @param off when it is switched off [s]
   * @param end [s]
   */
  double[] run(double left, double on, double off, double end) {
    p[0] = left;
    p[1] = left;
    double[] shown = new double[(int) Math.ceil(end * 10) + 1];
    shown[0] = left;
    for (int i = 1; i < shown.length; i++) {
      double target = i / 10.0;
      while (time < target - 1e-9) {
        double next = time + LEAST_STEP + 0.02 * (time - switched);
        next = Math.min(target, Math.min(next, time + MOST_STEP));
        next = time < on ? Math.min(next, on) : time < off ? Math.min(next, off) : next;
        step(next - time);
        time = next;
        if (time == on || time == off) {
          pump = time == on;
          switched = time;
        }
      }
      shown[i] = p[car.gauge().ordinal()];
    }
    return shown;
  }

  private void step(double dt) {
    double[] before = new double[ZONES];
    for (int z = 0; z < ZONES; z++) {
      before[z] = zones[z].taken(p[z]) + creep(z, p[z], 0);
    }
    double[] x = p.clone();
    for (int round = 0; round < 40; round++) {
      double[] r = residual(x, before, dt);
      double[][] slopes = new double[ZONES][ZONES];
      for (int j = 0; j < ZONES; j++) {
        double[] moved = x.clone();
        moved[j] += 1;
        double[] other = residual(moved, before, dt);
        for (int i = 0; i < ZONES; i++) {
          slopes[i][j] = other[i] - r[i];
        }
      }
      double[] change =
          new LUDecomposition(new Array2DRowRealMatrix(slopes, false), TINY)
              .getSolver()
              .solve(new ArrayRealVector(r, false))
              .toArray();
      double largest = 0;
      for (double one : change) {
        largest = Math.max(largest, Math.abs(one));
      }
      double share = Math.min(1, FARTHEST / Math.max(largest, 1e-9)) * (round > 12 ? 0.5 : 1);
      for (int i = 0; i < ZONES; i++) {
        x[i] -= share * change[i];
      }
      if (largest < 2) {
        break;
      }
    }
    for (int z = 0; z < ZONES; z++) {
      for (int k = 0; k < crept[z].length; k++) {
        double share = dt / car.creep().time()[k];
        crept[z][k] = (crept[z][k] + share * x[z]) / (1 + share);
      }
      p[z] = x[z];
    }
    open = p[1] > plumbing.opening() + (open ? -1 : 1) * plumbing.friction();
  }

  /** Fuel in the creep branches after a step to a pressure [m³]; before it for dt = 0. */
  private double creep(int zone, double pressure, double dt) {
    double sum = 0;
    for (int k = 0; k < crept[zone].length; k++) {
      double share = dt / car.creep().time()[k];
      sum += car.creep().share()[k] * (crept[zone][k] + share * pressure) / (1 + share);
    }
    return sum * zones[zone].hose();
  }

  private double[] residual(double[] x, double[] before, double dt) {
    double[] r = new double[ZONES];
    for (int z = 0; z < ZONES; z++) {
      r[z] = zones[z].taken(x[z]) + creep(z, x[z], dt) - before[z];
    }
    r[0] -= dt * (pump ? plumbing.pump().flow(x[0], time + dt - switched) : 0);
    move(r, 0, 1, dt * plumbing.filter().flow(x[0] - x[1]));
    move(r, 1, 2, dt * regulator(x[1], x[2]));
    move(r, 2, -1, dt * plumbing.back().flow(x[2]));
    for (Leak weep : car.weeps()) {
      leak(r, x, weep, dt);
    }
    if (leak != null) {
      leak(r, x, leak, dt);
    }
    return r;
  }

  private double regulator(double up, double down) {
    double from = plumbing.opening() + (open ? -1 : 1) * plumbing.friction();
    double lift = Leak.above(up - from, EVEN);
    return plumbing.gain() * lift * Math.sqrt(Leak.above(up - down, EVEN));
  }

  private static void leak(double[] r, double[] x, Leak leak, double dt) {
    int from = leak.from().ordinal();
    int to = leak.to() == Place.OUTSIDE ? -1 : leak.to().ordinal();
    move(r, from, to, dt * leak.flow(x[from], to < 0 ? 0 : x[to]));
  }

  private static void move(double[] r, int from, int to, double volume) {
    r[from] += volume;
    if (to >= 0) {
      r[to] -= volume;
    }
  }
}
