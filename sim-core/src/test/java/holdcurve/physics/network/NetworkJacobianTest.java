package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.flow.SeatLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Analytic derivatives against differenced ones, for each element and for whole networks. */
class NetworkJacobianTest {
  private static final Condition LEAKY =
      Condition.sound(Circuits.SIX_CYLINDER)
          .with(new LeakPath("rail", "air", OrificeLaw.throughPoint(1e-8, 2e5, 100)))
          .with(
              new LeakPath("feed-start", "pump-outlet", SeatLaw.throughPoint(1e-8, 2e5, 1e4, .5)));

  @Property(tries = 60)
  void everyElementGivesItsDerivatives(
      @ForAll boolean pump,
      @ForAll boolean feedClamped,
      @ForAll boolean returnClamped,
      @ForAll @DoubleRange(max = 0.5) double duty,
      @ForAll Detail detail,
      @ForAll Random random) {
    Network network = network(pump, feedClamped, returnClamped, duty, detail);
    double[] y = state(network, random);
    for (Element element : network.elements()) {
      double[][] analytic = new double[y.length][y.length];
      element.addJacobian(0, y, analytic);
      double[][] differenced =
          DifferencedRates.jacobian(
              (point, rates) -> element.addRates(0, point, rates), network.layout(), y);
      double[] rates = new double[y.length];
      element.addRates(0, y, rates);
      compare(differenced, analytic, rates, element.name());
    }
  }

  @Property(tries = 60)
  void theNetworkGivesItsDerivatives(
      @ForAll boolean pump,
      @ForAll boolean feedClamped,
      @ForAll boolean returnClamped,
      @ForAll @DoubleRange(max = 0.5) double duty,
      @ForAll Detail detail,
      @ForAll Random random) {
    Network network = network(pump, feedClamped, returnClamped, duty, detail);
    double[] y = state(network, random);
    double[][] analytic = new double[y.length][y.length];
    network.computeJacobian(0, y, analytic);
    double[][] differenced =
        DifferencedRates.jacobian(
            (point, rates) -> network.computeDerivatives(0, point, rates), network.layout(), y);
    double[] rates = new double[y.length];
    network.computeDerivatives(0, y, rates);
    compare(differenced, analytic, rates, "network");
  }

  @Example
  void aCourseOfTemperatureGivesItsTimeDerivative() {
    Operation operation =
        Operation.holding().withTemperatureCourse(new TemperatureCourse(-0.8, -1.5, 0.6));
    Network network = NetworkAssembler.assemble(LEAKY, operation, Detail.FULL);
    double[] y = network.stateAt(point -> 1.5e5, 20, 0);
    double[] derivative = new double[y.length];
    network.computeTimeDerivative(170, y, derivative);
    for (int i = 0; i < y.length; i++) {
      double differenced = (rate(network, 170.5, y, i) - rate(network, 169.5, y, i)) / 1;
      assertEquals(differenced, derivative[i], 1e-6 * Math.abs(differenced) + 1e-3, "row " + i);
    }
  }

  private static double rate(Network network, double t, double[] y, int row) {
    double[] rates = new double[y.length];
    network.computeDerivatives(t, y, rates);
    return rates[row];
  }

  private static Network network(
      boolean pump, boolean feedClamped, boolean returnClamped, double duty, Detail detail) {
    Set<String> clamped =
        feedClamped
            ? returnClamped ? Circuits.CLAMPABLE : Set.of("feed-hose")
            : returnClamped ? Set.of("return-hose") : Set.of();
    Operation operation =
        Operation.holding().withPump(pump).withClamps(clamped, 1e-16).withEngine(duty, -3e4);
    return NetworkAssembler.assemble(LEAKY, operation, detail);
  }

  /** Pressures from a slight vacuum to 4 bar, walls between relaxed and fully stretched. */
  private static double[] state(Network network, Random random) {
    double[] y = network.stateAt(point -> -2e4 + 4.2e5 * random.nextDouble(), 300, 0);
    if (network.layout().warmthRow() >= 0) {
      y[network.layout().warmthRow()] = 20 * random.nextDouble() - 10;
    }
    return y;
  }

  /**
   * Allowed gap: 1e-6 of the entry, plus what rounding leaves in a difference over a twentieth of a
   * pascal: some units in the last place of the rate, and of a pressure times the row's largest
   * slope.
   */
  private static void compare(
      double[][] differenced, double[][] analytic, double[] rates, String what) {
    for (int i = 0; i < analytic.length; i++) {
      double largest = Arrays.stream(analytic[i]).map(Math::abs).max().orElseThrow();
      double rounding = 1e-14 * Math.abs(rates[i]) + 1e-8 * largest + 1e-40;
      for (int j = 0; j < analytic.length; j++) {
        double allowed = 1e-6 * Math.abs(analytic[i][j]) + rounding;
        assertEquals(
            differenced[i][j], analytic[i][j], allowed, what + ", row " + i + ", column " + j);
      }
    }
  }
}
