package holdcurve.part;

import holdcurve.circuit.Part;
import holdcurve.circuit.Property;
import holdcurve.flow.Pipe;
import holdcurve.flow.PipeLaw;
import holdcurve.model.NetworkBuilder;
import holdcurve.model.Region;

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
