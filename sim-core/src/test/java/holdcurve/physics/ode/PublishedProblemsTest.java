package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * End values of published problems; the source stands at {@link PublishedProblem}. Tolerances are
 * absolute = relative · floor, so that an error of 1 in the unit used here means "as large as the
 * tolerance".
 */
class PublishedProblemsTest {
  private static final double[] TOLERANCES = {1e-4, 1e-6, 1e-8};

  static List<PublishedProblem> stiff() {
    return List.of(
        new Robertson(),
        new Hires(),
        VanDerPol.slow(),
        VanDerPol.scaled(),
        new Oregonator(),
        new Pollution());
  }

  static List<PublishedProblem> all() {
    return List.of(
        new Robertson(),
        new Hires(),
        VanDerPol.slow(),
        VanDerPol.scaled(),
        new Oregonator(),
        new Pollution(),
        new E5(),
        new Pleiades());
  }

  static double[] solve(PublishedProblem problem, RosenbrockMethod method, double relative) {
    Tolerances tolerances = Tolerances.relative(relative, problem.floor());
    LeanRosenbrockDriver driver = new LeanRosenbrockDriver(method.tableau(), tolerances);
    double[] y = problem.initial();
    driver.integrate(problem, problem.start(), y, problem.stop(), new double[0], new double[0][]);
    return y;
  }

  /** The Oregonator comes out at 5 tolerances, the other problems below 2. */
  @OutsideCheck(
      what = "end values of stiff problems",
      source = "IVP Test Set (Mazzia, Cash and Soetaert 2012)",
      value = "Robertson, HIRES, van der Pol twice, Oregonator, Pollution",
      tolerance = 10,
      unit = "of the integration tolerance")
  @ParameterizedTest
  @MethodSource("stiff")
  void stiffProblemsEndWithinTenTolerances(PublishedProblem problem) {
    assertEndsWithin("end values of stiff problems", problem);
  }

  /** Close encounters of the stars multiply early errors by some hundreds. */
  @OutsideCheck(
      what = "end values of close stars",
      source = "IVP Test Set (Mazzia, Cash and Soetaert 2012)",
      value = "Pleiades",
      tolerance = 1000,
      unit = "of the integration tolerance")
  @Test
  void pleiadesEndsWithinAThousandTolerances() {
    assertEndsWithin("end values of close stars", new Pleiades());
  }

  private static void assertEndsWithin(String what, PublishedProblem problem) {
    for (RosenbrockMethod method : RosenbrockMethod.values()) {
      for (double relative : TOLERANCES) {
        double error = problem.error(solve(problem, method, relative));
        OutsideChecks.holds(what, 0, error / relative);
      }
    }
  }

  /**
   * The published end value of E5 hangs on keeping y2 − y3 − y4 = 0 to 1e-24 and was not reproduced
   * by independent programs; checked is the late law y2 = y3 = 1/(M C t), by the mean of the two,
   * which is insensitive to that difference.
   */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void e5FollowsItsLateLaw(RosenbrockMethod method) {
    E5 problem = new E5();
    double[] y = solve(problem, method, 1e-8);
    double late = problem.late(problem.stop());
    assertEquals(late, Math.sqrt(y[1] * y[2]), 0.05 * late);
  }

  @ParameterizedTest
  @MethodSource("all")
  void analyticJacobiansAgreeWithCentralDifferences(PublishedProblem problem) {
    int n = problem.getDimension();
    double[] y = problem.initial();
    for (int i = 0; i < n; i++) {
      y[i] = y[i] * (1 + 0.1 * Math.sin(i + 1)) + 0.1 * Math.cos(i);
    }
    double[][] analytic = new double[n][n];
    problem.computeJacobian(0, y, analytic);
    double[][] differenced = CentralDifferences.jacobian(problem, y);
    for (int i = 0; i < n; i++) {
      double largest = Arrays.stream(analytic[i]).map(Math::abs).max().orElseThrow();
      for (int j = 0; j < n; j++) {
        assertEquals(differenced[i][j], analytic[i][j], 1e-7 * largest, "row " + i + ", " + j);
      }
    }
  }
}
