package holdcurve.physics.network;

import holdcurve.oracle.TestFluid;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.flow.FlowLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The vessel of the closed forms: 40 mL of fuel at 0.9 GPa in a wall that takes 2e-13 m³/Pa,
 * together 2.444444e-13 m³/Pa, with a gauge that follows at once.
 */
final class Vessel implements PartEquations {
  static final double CAPACITY = 40e-6 / TestFluid.FUEL.modulus() + 2e-13;

  private static final String POINT = "inside";

  @Override
  public String id() {
    return "vessel";
  }

  @Override
  public String title() {
    return "Vessel";
  }

  @Override
  public Ports ports() {
    return Ports.ONE;
  }

  @Override
  public List<Property> properties() {
    return List.of();
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    network.addLiquid(POINT, 40e-6 - NetworkBuilder.FITTING_VOLUME);
    network.addWall(POINT, 2e-13);
  }

  /** The vessel with these leaks to the surroundings. */
  static Network leakingBy(FlowLaw... laws) {
    return leakingTo(Circuit.AIR, Operation.holding(), NetworkAssembler.Detail.FULL, laws);
  }

  /** The vessel with these leaks to a boundary. */
  static Network leakingTo(
      String boundary, Operation operation, NetworkAssembler.Detail detail, FlowLaw... laws) {
    Part vessel = Part.of(new Vessel(), "vessel", POINT, POINT, Map.of());
    List<LeakPath> leaks = new ArrayList<>();
    for (FlowLaw law : laws) {
      leaks.add(new LeakPath(POINT, boundary, law));
    }
    Circuit circuit = new Circuit("closed form", TestFluid.FUEL, List.of(vessel));
    return NetworkAssembler.assemble(new Condition(circuit, leaks), operation, detail);
  }
}
