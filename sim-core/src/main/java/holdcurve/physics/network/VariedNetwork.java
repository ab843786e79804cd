package holdcurve.physics.network;

import holdcurve.physics.ode.ParametricEquations;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * A network with others that differ from it a little, each by a step of one parameter: its
 * derivatives by those parameters are differences of right sides at the same state, taken only
 * where two networks differ. Has scratch space: one a thread.
 */
public final class VariedNetwork implements ParametricEquations {
  private final Network base;
  private final NetworkDifference[] differences;
  private final double inverseStep;
  private final Element[] removed;
  private final double[][] removedRates;
  private final double[][][] lost;
  private final double[] capacity;
  private final double[] flow;
  private final double[] change;

  /**
   * @param moved variants of {@code base}
   * @param step by which the parameter of each was moved [unit of the parameter]
   */
  public VariedNetwork(Network base, List<NetworkVariant> moved, double step) {
    this.base = base;
    this.inverseStep = 1 / step;
    this.differences = new NetworkDifference[moved.size()];
    this.lost = new double[moved.size()][][];
    Map<Element, double[]> rates = new IdentityHashMap<>();
    for (int k = 0; k < differences.length; k++) {
      differences[k] = moved.get(k).difference();
      Element[] gone = differences[k].removed();
      lost[k] = new double[gone.length][];
      for (int i = 0; i < gone.length; i++) {
        lost[k][i] = rates.computeIfAbsent(gone[i], e -> new double[base.getDimension()]);
      }
    }
    this.removed = rates.keySet().toArray(Element[]::new);
    this.removedRates = new double[removed.length][];
    for (int i = 0; i < removed.length; i++) {
      removedRates[i] = rates.get(removed[i]);
    }
    this.capacity = new double[base.layout().nodes().size()];
    this.flow = new double[base.getDimension()];
    this.change = new double[base.getDimension()];
  }

  @Override
  public int getDimension() {
    return base.getDimension();
  }

  @Override
  public int getParameterCount() {
    return differences.length;
  }

  @Override
  public boolean isAutonomous() {
    return base.isAutonomous();
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] rates) {
    base.computeDerivatives(t, y, rates);
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] jacobian) {
    base.computeJacobian(t, y, jacobian);
  }

  @Override
  public void computeTimeDerivative(double t, double[] y, double[] derivative) {
    base.computeTimeDerivative(t, y, derivative);
  }

  @Override
  public boolean jumpsOver(double[] from, double[] to) {
    return base.jumpsOver(from, to);
  }

  @Override
  public void computeParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride) {
    base.collect(t, y, flow);
    fillParameterDerivatives(t, y, dfdtheta, stride);
  }

  @Override
  public void computeVariation(
      double t, double[] y, double[][] jacobian, double[] dfdtheta, int stride) {
    base.collect(t, y, flow);
    base.fillJacobian(t, y, flow, jacobian);
    fillParameterDerivatives(t, y, dfdtheta, stride);
  }

  @Override
  public void linearize(double t, double[] y, double[] rates, double[][] jacobian) {
    base.linearize(t, y, rates, jacobian);
  }

  private void fillParameterDerivatives(double t, double[] y, double[] dfdtheta, int stride) {
    for (int i = 0; i < capacity.length; i++) {
      capacity[i] = base.capacity(i, y[i]);
    }
    for (int e = 0; e < removed.length; e++) {
      Arrays.fill(removedRates[e], 0);
      removed[e].addRates(t, y, removedRates[e]);
    }
    for (int k = 0; k < differences.length; k++) {
      differences[k].fill(t, y, flow, capacity, lost[k], change);
      for (int i = 0; i < change.length; i++) {
        dfdtheta[i * stride + k] = change[i] * inverseStep;
      }
    }
  }
}
