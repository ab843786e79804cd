package holdcurve.physics.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Circuits;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.RosenbrockIntegrator;
import holdcurve.physics.ode.RosenbrockMethod;
import java.util.Arrays;
import java.util.Set;
import org.apache.commons.math3.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The same circuit by Commons Math's explicit integrator, wherever that gets to the end. */
class ExplicitIntegratorTest {
  private static final Condition LEAKY =
      Condition.sound(Circuits.SIX_CYLINDER)
          .with(new LeakPath("rail", "air", LaminarLaw.throughPoint(2e-8, 2e5)));

  @Test
  void agreesOnAHold() {
    compare(NetworkAssembler.assemble(LEAKY, Operation.holding(), Detail.LUMPED), 2.05e5, 120);
  }

  @Test
  void agreesOnAClampedHold() {
    Operation held = Operation.holding().withClamps(Set.of("return-hose"), 1e-16);
    compare(NetworkAssembler.assemble(LEAKY, held, Detail.LUMPED), 1.9e5, 120);
  }

  /** All nodes kept, the explicit one follows for a few milliseconds. */
  @Test
  void agreesOnTheFirstMomentsOfPriming() {
    compare(NetworkAssembler.assemble(LEAKY, Operation.priming(), Detail.FULL), 0, 2e-3);
  }

  private static void compare(Network network, double pressure, double end) {
    double[] start =
        network.stateAt(p -> network.layout().node(p).boundary() ? 0 : pressure, 20, 2);
    double[] scales = network.layout().scales();
    double[] absolute = Arrays.stream(scales).map(scale -> 1e-9 * scale).toArray();
    double[] relative = new double[scales.length];
    Arrays.fill(relative, 1e-9);
    var implicit =
        new RosenbrockIntegrator(RosenbrockMethod.RODAS5P.tableau(), 0, 1e9, absolute, relative);
    var explicit = new DormandPrince853Integrator(0, 1e9, absolute, relative);
    double[] expected = run(explicit, network, start, end);
    double[] actual = run(implicit, network, start, end);
    for (int i = 0; i < start.length; i++) {
      assertEquals(
          expected[i],
          actual[i],
          1e-6 * (Math.abs(expected[i]) + scales[i]),
          network.layout().describe(i));
    }
  }

  private static double[] run(
      AdaptiveStepsizeIntegrator integrator, Network network, double[] start, double end) {
    double[] result = new double[start.length];
    integrator.integrate(network, 0, start, end, result);
    return result;
  }
}
