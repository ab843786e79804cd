package holdcurve.physics.ode;

import java.util.Arrays;
import java.util.List;

/**
 * Coefficients of one linearly implicit (Rosenbrock) method with s stages, all [-], in the form
 * that needs no product with the Jacobian (Hairer &amp; Wanner, Solving Ordinary Differential
 * Equations II, 2nd ed. 1996, sect. IV.7):
 *
 * <pre>
 * (I/(hγ) − J) U_i = f(t + c_i h, y + Σ a_ij U_j) + Σ (k_ij/h) U_j + h d_i ∂f/∂t     j &lt; i
 * y1 = y + Σ m_i U_i        error = Σ e_i U_i        K_l = Σ h_li U_i
 * y(θ) = (1 − θ) y0 + θ {y1 + (1 − θ) [K_1 + θ (K_2 + θ K_3)]}      0 ≤ θ ≤ 1
 * </pre>
 *
 * Immutable: the accessors hand out copies.
 */
public final class RosenbrockTableau {

  /**
   * @param main order of y1
   * @param embedded order of y1 less the error
   * @param dense degree to which y(θ) is exact within a step; its error over many steps falls with
   *     one power more, so it keeps the order of the main solution
   */
  public record Orders(int main, int embedded, int dense) {}

  /**
   * One stage.
   *
   * @param time c_i
   * @param slope d_i
   * @param coupling a_ij, i entries
   * @param carry k_ij, i entries
   */
  record Stage(double time, double slope, double[] coupling, double[] carry) {}

  private final String name;
  private final String paper;
  private final Orders orders;
  private final double gamma;
  private final Stage[] stages;
  private final double[] weights;
  private final double[] error;
  private final double[][] dense;

  RosenbrockTableau(
      String name,
      String paper,
      Orders orders,
      double gamma,
      List<Stage> stages,
      double[] weights,
      double[] error,
      List<double[]> dense) {
    this.name = name;
    this.paper = paper;
    this.orders = orders;
    this.gamma = gamma;
    this.stages = stages.toArray(Stage[]::new);
    this.weights = weights;
    this.error = error;
    this.dense = dense.toArray(double[][]::new);
  }

  static double[] row(double... values) {
    return values;
  }

  public String name() {
    return name;
  }

  public Orders orders() {
    return orders;
  }

  public int stageCount() {
    return stages.length;
  }

  /** Number of vectors K_l in the dense output. */
  public int denseCount() {
    return dense.length;
  }

  public double gamma() {
    return gamma;
  }

  /** c_i, s entries. */
  public double[] times() {
    return Arrays.stream(stages).mapToDouble(Stage::time).toArray();
  }

  /** d_i, s entries. */
  public double[] slopes() {
    return Arrays.stream(stages).mapToDouble(Stage::slope).toArray();
  }

  /** a_ij, row i with i entries. */
  public double[][] coupling() {
    return Arrays.stream(stages).map(stage -> stage.coupling().clone()).toArray(double[][]::new);
  }

  /** k_ij, row i with i entries. */
  public double[][] carry() {
    return Arrays.stream(stages).map(stage -> stage.carry().clone()).toArray(double[][]::new);
  }

  /** m_i, s entries. */
  public double[] weights() {
    return weights.clone();
  }

  /** e_i, s entries. */
  public double[] error() {
    return error.clone();
  }

  /** h_li, {@link #denseCount} rows of s entries. */
  public double[][] dense() {
    return Arrays.stream(dense).map(double[]::clone).toArray(double[][]::new);
  }

  @Override
  public String toString() {
    return name;
  }
}
