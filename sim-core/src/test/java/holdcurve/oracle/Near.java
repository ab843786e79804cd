package holdcurve.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;

/** Comparisons by relative gap, and derivatives by differences. */
public final class Near {
  private Near() {}

  /** Fails unless the values agree to the given fraction of the expected one. */
  public static void assertNear(double expected, double actual, double fraction, String what) {
    assertEquals(expected, actual, fraction * Math.abs(expected), what);
  }

  /** Derivative by the five-point rule. */
  public static double derivative(DoubleUnaryOperator f, double x, double step) {
    double inner = f.applyAsDouble(x + step) - f.applyAsDouble(x - step);
    double outer = f.applyAsDouble(x + 2 * step) - f.applyAsDouble(x - 2 * step);
    return (8 * inner - outer) / (12 * step);
  }
}
