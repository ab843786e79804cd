package holdcurve.physics.balance;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.network.Element;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.Node;
import holdcurve.physics.ode.StiffEquations;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A network with a ledger of its gauge's node. After the rows of the network stand, for each entry,
 * the pressure it has brought, ∫ Q/C dt [Pa], then for each the volume, ∫ Q dt [m³]. The pressures
 * add up to that of the node, a linear invariant, which Rosenbrock methods keep.
 *
 * <p>Entries: one a leak, then one a cause in the order of {@link #CAUSES}.
 */
final class LedgerEquations implements StiffEquations {
  static final List<Cause> CAUSES =
      List.of(Cause.WEEP, Cause.CREEP, Cause.TEMPERATURE, Cause.RESEAT, Cause.CLAMP, Cause.OTHER);

  /** Relative step by which the slope of a capacity is taken [-]. */
  private static final double STEP = 1e-4;

  private final Network network;
  private final Node gauge;
  private final List<LedgerEntry> entries = new ArrayList<>();
  private final int n;
  private final double[] state;
  private final double[] rates;
  private final double[][] jacobian;
  private final double[] slopes;

  LedgerEquations(Network network, Condition condition) {
    this.network = network;
    this.gauge = network.layout().node(network.layout().gaugePoint());
    n = network.getDimension();
    state = new double[n];
    rates = new double[n];
    jacobian = new double[n][n];
    slopes = new double[n];
    for (LeakPath leak : condition.leaks()) {
      entries.add(new LeakEntry(leak, network, gauge));
    }
    Map<Cause, List<Element>> elements = elements(condition);
    for (Cause cause : CAUSES) {
      entries.add(new ElementsEntry(elements.getOrDefault(cause, List.of()), gauge.row(), n));
    }
  }

  private Map<Cause, List<Element>> elements(Condition condition) {
    Causes causes = new Causes(condition.circuit());
    Map<Cause, List<Element>> elements = new EnumMap<>(Cause.class);
    for (Element element : network.elements()) {
      causes
          .of(element)
          .ifPresent(
              cause -> elements.computeIfAbsent(cause, key -> new ArrayList<>()).add(element));
    }
    return elements;
  }

  Network network() {
    return network;
  }

  int entryCount() {
    return entries.size();
  }

  /** Pressure at the gauge [Pa]. */
  double pressure(double[] y) {
    return y[gauge.row()];
  }

  /** The node's capacity [m³/Pa]. */
  double capacity(double pressure) {
    return network.capacity(gauge.row(), pressure);
  }

  /** What an entry has taken so far. */
  FallPart taken(double[] y, int entry) {
    return new FallPart(-y[n + entry], -y[n + entries.size() + entry]);
  }

  /** Adds to what an entry has brought. */
  void bring(double[] y, int entry, double pressure, double volume) {
    y[n + entry] += pressure;
    y[n + entries.size() + entry] += volume;
  }

  @Override
  public int getDimension() {
    return n + 2 * entries.size();
  }

  @Override
  public boolean isAutonomous() {
    return network.isAutonomous();
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] dydt) {
    System.arraycopy(y, 0, state, 0, n);
    network.computeDerivatives(t, state, rates);
    System.arraycopy(rates, 0, dydt, 0, n);
    double capacity = capacity(pressure(state));
    for (int e = 0; e < entries.size(); e++) {
      double flow = entries.get(e).flow(t, state);
      dydt[n + e] = flow / capacity;
      dydt[n + entries.size() + e] = flow;
    }
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    System.arraycopy(y, 0, state, 0, n);
    network.computeJacobian(t, state, jacobian);
    for (double[] row : dfdy) {
      Arrays.fill(row, 0);
    }
    for (int i = 0; i < n; i++) {
      System.arraycopy(jacobian[i], 0, dfdy[i], 0, n);
    }
    double p = pressure(state);
    double capacity = capacity(p);
    double step = STEP * (Math.abs(p) + 1e4);
    double bend = (capacity(p + step) - capacity(p - step)) / (2 * step) / capacity;
    for (int e = 0; e < entries.size(); e++) {
      Arrays.fill(slopes, 0);
      entries.get(e).addSlopes(t, state, slopes);
      for (int j = 0; j < n; j++) {
        dfdy[n + e][j] = slopes[j] / capacity;
        dfdy[n + entries.size() + e][j] = slopes[j];
      }
      dfdy[n + e][gauge.row()] -= entries.get(e).flow(t, state) / capacity * bend;
    }
  }

  @Override
  public void computeTimeDerivative(double t, double[] y, double[] dfdt) {
    System.arraycopy(y, 0, state, 0, n);
    network.computeTimeDerivative(t, state, rates);
    System.arraycopy(rates, 0, dfdt, 0, n);
    double capacity = capacity(pressure(state));
    for (int e = 0; e < entries.size(); e++) {
      double slope = entries.get(e).timeSlope(t, state);
      dfdt[n + e] = slope / capacity;
      dfdt[n + entries.size() + e] = slope;
    }
  }

  /** As for a network, and 0.01 bar and 1 mm³ for the entries. */
  double[] scales() {
    double[] scales = Arrays.copyOf(network.layout().scales(), getDimension());
    Arrays.fill(scales, n, n + entries.size(), 1e3);
    Arrays.fill(scales, n + entries.size(), scales.length, 1e-9);
    return scales;
  }
}
