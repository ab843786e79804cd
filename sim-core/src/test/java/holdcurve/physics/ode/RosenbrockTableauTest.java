package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Order conditions of Rosenbrock methods (Hairer &amp; Wanner, Solving Ordinary Differential
 * Equations II, 2nd ed. 1996, sect. IV.7): for each rooted tree of q vertices, Σ b_i Φ_i =
 * 1/γ(tree), where a vertex with one child contributes β = α + Γ and one with several contributes
 * α. Dense output: the same with b(θ) and θ^q/γ(tree) (sect. II.6 of the first volume).
 */
class RosenbrockTableauTest {
  private static final double ROUNDING = 1e-12;

  /** A method in the textbook form, got from the form without products with the Jacobian. */
  private static final class Textbook {
    final RealMatrix gamma;
    final RealMatrix alpha;
    final RealMatrix beta;

    Textbook(RosenbrockTableau table) {
      int s = table.stageCount();
      RealMatrix inverse =
          MatrixUtils.createRealIdentityMatrix(s).scalarMultiply(1 / table.gamma());
      RealMatrix carry = square(table.carry());
      gamma = new LUDecomposition(inverse.subtract(carry)).getSolver().getInverse();
      alpha = square(table.coupling()).multiply(gamma);
      beta = alpha.add(gamma);
    }

    double[] weights(double[] overStages) {
      return gamma.preMultiply(overStages);
    }

    double[] phi(RootedTree tree) {
      double[] product = new double[alpha.getRowDimension()];
      Arrays.fill(product, 1);
      RealMatrix along = tree.children().size() == 1 ? beta : alpha;
      for (RootedTree child : tree.children()) {
        double[] factor = along.operate(phi(child));
        for (int i = 0; i < product.length; i++) {
          product[i] *= factor[i];
        }
      }
      return product;
    }

    void assertOrder(int order, double[] overStages, double theta) {
      double[] b = weights(overStages);
      for (int q = 1; q <= order; q++) {
        for (RootedTree tree : RootedTree.ofOrder(q)) {
          double expected = Math.pow(theta, q) / tree.density();
          assertEquals(expected, dot(b, phi(tree)), ROUNDING, "order " + q + ": " + tree);
        }
      }
    }
  }

  private static RealMatrix square(double[][] lower) {
    double[][] full = new double[lower.length][];
    for (int i = 0; i < full.length; i++) {
      full[i] = Arrays.copyOf(lower[i], full.length);
    }
    return new Array2DRowRealMatrix(full);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double[] minus(double[] a, double[] b) {
    double[] difference = a.clone();
    for (int i = 0; i < a.length; i++) {
      difference[i] -= b[i];
    }
    return difference;
  }

  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void mainAndEmbeddedSolutionMeetAllOrderConditions(RosenbrockMethod method) {
    RosenbrockTableau table = method.tableau();
    Textbook book = new Textbook(table);
    book.assertOrder(table.orders().main(), table.weights(), 1);
    book.assertOrder(table.orders().embedded(), minus(table.weights(), table.error()), 1);
  }

  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void denseOutputMeetsTheConditionsOfItsOrder(RosenbrockMethod method) {
    RosenbrockTableau table = method.tableau();
    Textbook book = new Textbook(table);
    for (double theta : new double[] {0.1, 0.37, 0.5, 0.8, 1}) {
      book.assertOrder(table.orders().dense(), denseWeights(table, theta), theta);
    }
  }

  private static double[] denseWeights(RosenbrockTableau table, double theta) {
    double[] weights = new double[table.stageCount()];
    DenseOutput.state(theta, weights.clone(), table.weights(), table.dense(), weights);
    return weights;
  }

  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void timesAndSlopesAreRowSums(RosenbrockMethod method) {
    RosenbrockTableau table = method.tableau();
    Textbook book = new Textbook(table);
    double[] ones = new double[table.stageCount()];
    Arrays.fill(ones, 1);
    assertArrayEquals(book.alpha.operate(ones), table.times(), ROUNDING);
    assertArrayEquals(book.gamma.operate(ones), table.slopes(), ROUNDING);
  }

  /** R(∞) = 1 − b β⁻¹ 1 (Hairer &amp; Wanner II, sect. IV.7); 0 for main and embedded solution. */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void infinitelyStiffPartsVanishInOneStep(RosenbrockMethod method) {
    RosenbrockTableau table = method.tableau();
    Textbook book = new Textbook(table);
    RealMatrix inverse = new LUDecomposition(book.beta).getSolver().getInverse();
    double[] ones = new double[table.stageCount()];
    Arrays.fill(ones, 1);
    double[] remains = inverse.operate(ones);
    double[] embedded = minus(table.weights(), table.error());
    assertEquals(1, dot(book.weights(table.weights()), remains), ROUNDING);
    assertEquals(1, dot(book.weights(embedded), remains), ROUNDING);
  }
}
