package holdcurve.physics.network;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.TestFluid;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.Pipe;
import holdcurve.physics.flow.PipeLaw;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.ode.RosenbrockIntegrator;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.part.RigidPipe;
import holdcurve.physics.part.Tank;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.ode.events.EventHandler;
import org.junit.jupiter.api.Test;

class InertLineTest {
  private static final int PIECES = 30;
  private static final double LENGTH = 60;

  /** Notes every change of sign of one row. */
  private record Crossings(int row, List<Double> times) implements EventHandler {
    @Override
    public void init(double t0, double[] y0, double t) {}

    @Override
    public double g(double t, double[] y) {
      return y[row];
    }

    @Override
    public Action eventOccurred(double t, double[] y, boolean increasing) {
      times.add(t);
      return Action.CONTINUE;
    }

    @Override
    public void resetState(double t, double[] y) {}
  }

  /**
   * Fuel of 0.9 GPa and 740 kg/m³ in steel 6 × 0.8 mm: Korteweg's wave speed 1085 m/s, computed
   * apart for a thin wall with expansion joints; the thick wall held lengthwise makes it 0.25 %
   * slower, and what fittings hold as much again. A line open to a tank at one end and shut at the
   * other rings with the period 4 L/a.
   */
  @Test
  void lineRingsAtFourTimesItsLengthOverTheWaveSpeed() {
    Network line = line(Operation.holding().at(Pace.FAST));
    int shutEnd = line.layout().node("p" + PIECES).row();
    Crossings crossings = new Crossings(shutEnd, new ArrayList<>());
    double[] y = line.stateAt(p -> line.layout().node(p).boundary() ? 0 : 2e4, 0, 0);
    double quarter = LENGTH / 1085.269;
    RosenbrockIntegrator integrator =
        new RosenbrockIntegrator(RosenbrockMethod.RODAS4.tableau(), 0, 2e-3, 1e-9, 1e-6);
    integrator.addEventHandler(crossings, 2e-3, 1e-9, 100);
    integrator.integrate(line, 0, y, 8.5 * quarter, y);
    List<Double> times = crossings.times();
    assertTrue(times.size() >= 4, "crossings " + times);
    assertNear(quarter, times.get(0), 0.03, "first arrival");
    assertNear(2 * quarter, (times.get(3) - times.get(0)) / 3, 0.01, "half a period");
  }

  @Test
  void slowLinesHaveNoFlowOfTheirOwn() {
    Network slow = line(Operation.holding());
    Network fast = line(Operation.holding().at(Pace.FAST));
    assertEquals(slow.getDimension() + PIECES, fast.getDimension());
    assertEquals(
        "flow through pipe 1", fast.layout().describe(fast.layout().flowRows().get("pipe 1")));
  }

  @Test
  void derivativesAreTheDifferencedOnes() {
    Network fast = line(Operation.holding().at(Pace.FAST));
    double[] y = fast.stateAt(point -> 1e4 * point.hashCode() % 7e4, 0, 0);
    fast.layout().flowRows().values().forEach(row -> y[row] = 1e-6 * (row % 5 - 2.5));
    for (Element element : fast.elements()) {
      double[][] analytic = new double[y.length][y.length];
      element.addJacobian(0, y, analytic);
      double[][] differenced =
          DifferencedRates.jacobian(
              (point, rates) -> element.addRates(0, point, rates), fast.layout(), y);
      for (int i = 0; i < y.length; i++) {
        for (int j = 0; j < y.length; j++) {
          assertEquals(
              differenced[i][j], analytic[i][j], 1e-6 * Math.abs(analytic[i][j]), element.name());
        }
      }
    }
  }

  /** Its steady flow is the friction law's: exactly at 1 L/min, and near it about there. */
  @Test
  void steadyFlowIsTheFrictionLaws() {
    PipeLaw law = new PipeLaw(new Pipe(6e-3, 3, 1.5e-6, 1.5), 740, 0.45e-3);
    Node from = Node.inner("a", 0);
    Node to = Node.inner("b", 1);
    InertLineElement line = InertLineElement.of("line", from, to, 2, 1e8, law);
    for (double share : new double[] {0.5, 1, 2}) {
      double flow = share * InertLineElement.REFERENCE_FLOW;
      double drop = line.laminar() * flow + line.turbulent() * flow * flow;
      double gap = share == 1 ? 1e-9 : 0.15;
      assertNear(flow, law.flow(drop), gap, "flow at " + share + " L/min");
    }
    assertNear(law.slope(0), 1 / line.laminar(), 1e-12, "at rest");
  }

  private static Network line(Operation operation) {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.of(Tank.KIND, "p0", "p0", "p0", Map.of()));
    double length = LENGTH / PIECES;
    for (int i = 1; i <= PIECES; i++) {
      parts.add(
          Part.of(
              RigidPipe.KIND,
              "pipe " + i,
              "p" + (i - 1),
              "p" + i,
              Map.of(RigidPipe.LENGTH, length, RigidPipe.BORE, 6e-3, RigidPipe.WALL, 0.8e-3)));
    }
    Circuit circuit = new Circuit("line", TestFluid.FUEL, parts);
    return NetworkAssembler.assemble(Condition.sound(circuit), operation, Detail.FULL);
  }
}
