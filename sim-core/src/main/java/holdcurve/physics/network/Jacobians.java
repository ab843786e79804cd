package holdcurve.physics.network;

/** Where a flow's partial derivatives go in the matrix. */
public final class Jacobians {
  private Jacobians() {}

  /**
   * Adds ∂Q/∂p of a flow Q from one node to another.
   *
   * @param jacobian square matrix, added to
   * @param from node that Q leaves
   * @param to node that Q enters
   * @param cause node whose pressure p the derivative is taken by
   * @param slope ∂Q/∂p [m³/(s·Pa)]
   */
  public static void addFlow(double[][] jacobian, Node from, Node to, Node cause, double slope) {
    if (cause.boundary()) {
      return;
    }
    if (from.row() >= 0) {
      jacobian[from.row()][cause.row()] -= slope;
    }
    if (to.row() >= 0) {
      jacobian[to.row()][cause.row()] += slope;
    }
  }
}
