package holdcurve.physics.balance;

import holdcurve.physics.network.Element;
import java.util.Arrays;
import java.util.List;

/** What some elements of a network bring into one node. */
final class ElementsEntry implements LedgerEntry {
  private final List<Element> elements;
  private final int node;
  private final double[] rates;
  private final double[][] jacobian;

  /**
   * @param node row of the node
   * @param dimension of the network
   */
  ElementsEntry(List<Element> elements, int node, int dimension) {
    this.elements = List.copyOf(elements);
    this.node = node;
    rates = new double[dimension];
    jacobian = new double[dimension][dimension];
  }

  @Override
  public double flow(double t, double[] y) {
    Arrays.fill(rates, 0);
    for (Element element : elements) {
      element.addRates(t, y, rates);
    }
    return rates[node];
  }

  @Override
  public void addSlopes(double t, double[] y, double[] slopes) {
    for (double[] row : jacobian) {
      Arrays.fill(row, 0);
    }
    for (Element element : elements) {
      element.addJacobian(t, y, jacobian);
    }
    for (int j = 0; j < rates.length; j++) {
      slopes[j] += jacobian[node][j];
    }
  }

  @Override
  public double timeSlope(double t, double[] y) {
    Arrays.fill(rates, 0);
    for (Element element : elements) {
      element.addTimeDerivative(t, y, rates);
    }
    return rates[node];
  }
}
