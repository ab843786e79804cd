package holdcurve.part;

import holdcurve.flow.FlowLaw;
import holdcurve.flow.Pipe;
import holdcurve.flow.PipeLaw;
import holdcurve.model.NetworkBuilder;

/** What pipes and hoses share. */
final class Lines {
  private Lines() {}

  static FlowLaw law(Pipe pipe, NetworkBuilder network) {
    double temperature = network.operation().fuelTemperature();
    return new PipeLaw(
        pipe, network.fluid().density(temperature), network.fluid().viscosity(temperature));
  }
}
