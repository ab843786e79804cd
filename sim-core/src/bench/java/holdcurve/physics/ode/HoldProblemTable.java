package holdcurve.physics.ode;

import holdcurve.bench.Clock;
import holdcurve.bench.Yardstick;
import holdcurve.physics.network.HoldNetwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The hold problem: time and true error of the lean path, with the equations as they stand and with
 * those put together from circuit elements, beside yardsticks measured in the same minute.
 */
public final class HoldProblemTable {
  private static final double[] TOLERANCES = {
    1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7, 1e-8
  };
  private static final double[] SHOWN = {1e-4, 1e-6, 1e-8};
  private static final double[] WANTED = {1e-4, 1e-6};

  /** One run: relative tolerance, true error [-], time [µs]. */
  private record Point(double tolerance, double error, double time) {}

  private final Map<String, Map<String, List<Point>>> measured = new TreeMap<>();

  /** Measures and prints. */
  public static void print() {
    HoldProblemTable table = new HoldProblemTable();
    for (RosenbrockMethod method : List.of(RosenbrockMethod.RODAS4P2, RosenbrockMethod.RODAS5P)) {
      table.measure(method, "equations", new HoldBenchmark(true), new HoldBenchmark(false));
      table.measure(method, "circuit", HoldNetwork.of(true), HoldNetwork.of(false));
    }
    table.add("CVODE", Yardstick.cvode(TOLERANCES));
    table.add("SciPy LSODA", Yardstick.scipy(TOLERANCES));
    table.printTolerances();
    table.printEqualErrors();
  }

  private void measure(
      RosenbrockMethod method, String how, StiffEquations prime, StiffEquations hold) {
    for (String variant : List.of("A", "B")) {
      for (double tolerance : TOLERANCES) {
        LeanRosenbrockDriver driver =
            new LeanRosenbrockDriver(
                method.tableau(), Tolerances.relative(tolerance, HoldBenchmark.FLOOR));
        double[][] rows = new double[HoldBenchmark.TIMES.length][9];
        double time = Clock.fastest(() -> solve(driver, variant, prime, hold, rows));
        add(method + ", " + how, variant, tolerance, time, rows);
      }
    }
  }

  private static void solve(
      LeanRosenbrockDriver driver,
      String variant,
      StiffEquations prime,
      StiffEquations hold,
      double[][] rows) {
    double[] y = START.get(variant).clone();
    double from = 0;
    if (variant.equals("B")) {
      from = HoldBenchmark.SWITCH;
      driver.integrate(prime, 0, y, from, HoldBenchmark.TIMES, rows);
    }
    driver.integrate(hold, from, y, 1800, HoldBenchmark.TIMES, rows);
  }

  private static final Map<String, double[]> START =
      Map.of("A", HoldBenchmark.initial("A"), "B", HoldBenchmark.initial("B"));

  private void add(String solver, String variant, double tolerance, double time, double[][] rows) {
    measured
        .computeIfAbsent(variant, key -> new TreeMap<>())
        .computeIfAbsent(solver, key -> new ArrayList<>())
        .add(new Point(tolerance, HoldBenchmark.error(variant, rows), time));
  }

  private void add(String solver, List<Yardstick.Run> runs) {
    for (Yardstick.Run run : runs) {
      double[][] rows = new double[HoldBenchmark.TIMES.length][9];
      for (int k = 1; k < rows.length; k++) {
        System.arraycopy(run.states(), (k - 1) * 9, rows[k], 0, 9);
      }
      add(solver, run.variant(), run.tolerance(), run.time(), rows);
    }
  }

  private void printTolerances() {
    System.out.println("\nHold problem: true error and time [µs] by relative tolerance");
    System.out.println("| variant | solver | 1e-4 | 1e-6 | 1e-8 |\n|---|---|---|---|---|");
    measured.forEach(
        (variant, solvers) ->
            solvers.forEach(
                (solver, points) -> {
                  StringBuilder line = new StringBuilder("| " + variant + " | " + solver + " |");
                  for (double tolerance : SHOWN) {
                    points.stream()
                        .filter(point -> point.tolerance == tolerance)
                        .forEach(p -> line.append(format(" %.1e, %.0f |", p.error, p.time)));
                  }
                  System.out.println(line);
                }));
  }

  private void printEqualErrors() {
    System.out.println("\nHold problem at equal true error: time [µs], and CVODE's over it");
    System.out.println("| variant | solver | 1e-4 | 1e-6 |\n|---|---|---|---|");
    measured.forEach(
        (variant, solvers) ->
            solvers.forEach(
                (solver, points) -> {
                  StringBuilder line = new StringBuilder("| " + variant + " | " + solver + " |");
                  for (double error : WANTED) {
                    double time = timeFor(points, error);
                    List<Point> yardstick = solvers.get("CVODE");
                    line.append(format(" %.0f", time));
                    line.append(
                        yardstick == null
                            ? " |"
                            : format(" (%.1f times) |", timeFor(yardstick, error) / time));
                  }
                  System.out.println(line);
                }));
  }

  /**
   * Time that it takes to stay below an error [µs]: between the last tolerance that misses it and
   * the first after which all meet it, even in logarithms.
   */
  private static double timeFor(List<Point> points, double error) {
    int first = points.size() - 1;
    while (first > 0 && points.get(first - 1).error <= error) {
      first--;
    }
    Point met = points.get(first);
    if (first == 0 || met.error > error) {
      return met.error > error ? Double.NaN : met.time;
    }
    Point missed = points.get(first - 1);
    double share = Math.log(missed.error / error) / Math.log(missed.error / met.error);
    return missed.time * Math.pow(met.time / missed.time, share);
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  private HoldProblemTable() {}
}
