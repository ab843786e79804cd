package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.flow.Pipe;
import holdcurve.physics.flow.PipeLaw;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.Region;

/** What pipes and hoses share. */
final class Lines {
  /** Where a line runs, for its temperature. */
  static final Property UNDER_FLOOR =
      Property.flag(
          "under_floor", false, "whether it runs under the floor, outside the engine bay");

  private Lines() {}

  static void addOpenBore(Part part, Pipe pipe, NetworkBuilder network) {
    double temperature = network.operation().fuelTemperature();
    double density = network.fluid().density(temperature);
    double inertance = density * pipe.length() / pipe.area();
    network.addOpenLine(
        part.id(),
        part.from(),
        part.to(),
        () -> new PipeLaw(pipe, density, network.fluid().viscosity(temperature)),
        inertance);
  }

  static Region region(Part part) {
    return part.is(UNDER_FLOOR) ? Region.FLOOR : Region.ENGINE;
  }
}
