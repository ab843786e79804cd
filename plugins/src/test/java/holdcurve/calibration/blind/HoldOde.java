package holdcurve.calibration.blind;

import holdcurve.calibration.blind.HoldPlan.Clamp;
import holdcurve.calibration.blind.Leak.Place;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * Volume balances of three bodies of fuel, stepped by implicit Euler with steps from 4 ms after
 * each switching to a quarter of a second: for each zone
 *
 * <pre>d/dt (taken(p) + Σ creep − V α θ) = what flows in − what flows out.</pre>
 *
 * Creep branches are eliminated exactly from each step, so that three pressures are left to solve
 * for by Newton's method. Written apart from the program that it is used to judge.
 */
final class HoldOde {
  private static final int ZONES = 3;

  /** Open hoses even out within milliseconds: 1 L/min for some 15 mbar [m³/(s·Pa)]. */
  private static final double OPEN = 1e-8;

  /** Pivots are compliances, far below what is usually called singular [m³/Pa]. */
  private static final double TINY = 1e-25;

  private static final double LEAST_STEP = 4e-3;
  private static final double MOST_STEP = 0.25;
  private static final double REGULATOR_GAIN = 5e-9;

  /** Over which its shutting is rounded; it passes nothing a few of these below [Pa]. */
  private static final double EVEN = 75;

  /** Once on its seat, the regulator sticks a little beyond its set pressure [-]. */
  private static final double LIFTS = 1.004;

  private final Car car;
  private final List<Leak> leaks;
  private final HoldPlan plan;
  private final Zone[] zones;
  private final double[][] crept;
  private final double[] p = new double[ZONES];
  private double time;
  private boolean seated;

  /**
   * @param crept what the creep branches of each zone hold when the pump is started [Pa], changed
   *     by the run and so handed on to the next hold
   */
  HoldOde(Car car, List<Leak> leaks, HoldPlan plan, double[][] crept) {
    this.car = car;
    this.leaks = leaks;
    this.plan = plan;
    this.crept = crept;
    zones = new Zone[] {car.zone(Place.FEED), car.zone(Place.RAIL), car.zone(Place.RETURN)};
  }

  /** Creep branches of a circuit that has stood without pressure. */
  static double[][] rested(Car car) {
    return new double[ZONES][car.creep().time().length];
  }

  /** Pressure at the gauge every tenth of a second [Pa], through the hold. */
  double[] run(double end) {
    p[0] = plan.pressure();
    p[1] = plan.pressure();
    p[2] = 0;
    soak(plan.soak());
    double[] shown = new double[(int) Math.ceil(end * 10) + 1];
    int gauge = car.gauge().ordinal();
    shown[0] = p[gauge];
    double switched = 0;
    for (int i = 1; i < shown.length; i++) {
      double target = i / 10.0;
      while (time < target - 1e-9) {
        double step = Math.min(MOST_STEP, LEAST_STEP + 0.02 * (time - switched));
        double next = Math.min(target, time + step);
        for (Clamp clamp : List.of(plan.feed(), plan.back())) {
          if (clamp.at() > time && clamp.at() <= next) {
            next = clamp.at();
            switched = next;
          }
        }
        step(next - time);
        time = next;
        if (time == switched && time > 0) {
          push();
        }
      }
      shown[i] = p[gauge];
    }
    return shown;
  }

  /** Hoses stretch while the pump runs. */
  private void soak(double seconds) {
    for (int z = 0; z < ZONES; z++) {
      for (int k = 0; k < crept[z].length; k++) {
        crept[z][k] += (p[z] - crept[z][k]) * -Math.expm1(-seconds / car.creep().time()[k]);
      }
    }
  }

  /** Hoses lie at some lower pressure between two holds. */
  void rest(double seconds, double pressure) {
    double[] held = p.clone();
    java.util.Arrays.fill(p, pressure);
    soak(seconds);
    System.arraycopy(held, 0, p, 0, ZONES);
  }

  private void push() {
    push(plan.feed(), 0, 1);
    push(plan.back(), 2, -1);
  }

  private void push(Clamp clamp, int one, int other) {
    if (clamp.at() == time) {
      p[one] += clamp.pushed() / compliance(one);
      if (other >= 0) {
        p[other] += clamp.pushed() / compliance(other);
      }
    }
  }

  private double compliance(int zone) {
    return (zones[zone].taken(p[zone] + 100) - zones[zone].taken(p[zone])) / 100;
  }

  private void step(double dt) {
    double[] before = new double[ZONES];
    for (int z = 0; z < ZONES; z++) {
      before[z] = zones[z].taken(p[z]) + creep(z, p[z], 0);
    }
    double[] x = p.clone();
    for (int round = 0; round < 12; round++) {
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
      for (int i = 0; i < ZONES; i++) {
        x[i] -= change[i];
        largest = Math.max(largest, Math.abs(change[i]));
      }
      if (largest < 0.5) {
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
    seated |= p[1] < car.closing();
  }

  /** Fuel in the creep branches after a step to pressure p [m³]; before it for dt = 0. */
  private double creep(int zone, double pressure, double dt) {
    double sum = 0;
    for (int k = 0; k < crept[zone].length; k++) {
      double share = dt / car.creep().time()[k];
      sum += car.creep().share()[k] * (crept[zone][k] + share * pressure) / (1 + share);
    }
    return sum * zones[zone].hose();
  }

  /** Balance of each zone over one step [m³]. */
  private double[] residual(double[] x, double[] before, double dt) {
    double[] r = new double[ZONES];
    for (int z = 0; z < ZONES; z++) {
      DoubleRise rise = z == 0 ? plan.floorWarming()::applyAsDouble : plan.warming()::applyAsDouble;
      double swelling = zones[z].liquid() * car.expansion() * (rise.at(time + dt) - rise.at(time));
      r[z] = zones[z].taken(x[z]) + creep(z, x[z], dt) - before[z] - swelling;
    }
    double over = x[1] - x[2];
    move(r, 0, 1, dt * way(plan.feed(), x[0] - x[1], dt));
    move(r, 2, -1, dt * way(plan.back(), x[2], dt));
    move(
        r,
        1,
        2,
        dt
            * REGULATOR_GAIN
            * above(x[1] - (seated ? LIFTS * car.set() : car.closing()))
            * (over > 0 ? 1 : 0));
    for (Leak leak : car.weeps()) {
      leak(r, x, leak, dt);
    }
    for (Leak leak : leaks) {
      leak(r, x, leak, dt);
    }
    return r;
  }

  private interface DoubleRise {
    double at(double time);
  }

  /** Excess over a threshold: a shut seat passes nothing soon below it. */
  private static double above(double difference) {
    return Leak.above(difference, EVEN);
  }

  private double way(Clamp clamp, double difference, double dt) {
    boolean shut = time + dt > clamp.at();
    return shut ? clamp.slip() * difference / 2e5 : OPEN * difference;
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
