package holdcurve.part;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;
import holdcurve.circuit.Property;
import holdcurve.fluid.Fluid;
import holdcurve.model.Element;
import holdcurve.model.Network;
import holdcurve.model.NetworkAssembler;
import holdcurve.model.NetworkAssembler.Detail;
import holdcurve.model.Operation;
import java.util.List;
import java.util.Map;

/** One part on a bench: its ends are connection points a and b, and nothing else is there. */
final class Bench {
  private Bench() {}

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
