package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.network.Element;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.Operation;
import java.util.List;
import java.util.Map;

/** One part on a bench: its ends are connection points a and b, and nothing else is there. */
final class PartBench {
  private PartBench() {}

  static Network of(Fluid fluid, Operation operation, PartKind kind, Map<Property, Double> given) {
    Part part = Part.of(kind, "part", "a", "b", given);
    Circuit circuit = new Circuit("bench", fluid, List.of(part));
    return NetworkAssembler.assemble(Condition.sound(circuit), operation, Detail.FULL);
  }

  /** Capacity of both ends together under no pressure [m³/Pa]. */
  static double capacity(Network network) {
    double sum = 0;
    for (int i = 0; i < network.layout().nodes().size(); i++) {
      sum += network.capacity(i, 0);
    }
    return sum;
  }

  /** Flow into end b through one element at a pressure difference a − b [m³/s]. */
  static double flow(Network network, String element, double difference) {
    double[] y = network.stateAt(point -> point.equals("a") ? difference : 0, 0, 0);
    double[] rates = new double[y.length];
    network.elements().stream()
        .filter(one -> one.name().equals(element))
        .findFirst()
        .map(Element.class::cast)
        .orElseThrow()
        .addRates(0, y, rates);
    return -rates[network.layout().node("a").row()];
  }
}
