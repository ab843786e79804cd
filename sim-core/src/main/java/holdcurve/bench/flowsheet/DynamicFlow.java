package holdcurve.bench.flowsheet;

import holdcurve.common.input.Require;

/**
 * Dynamic flow: what one pulse delivers.
 *
 * @param pulse width of the pulse [s]
 * @param volume delivered by it [m³]
 */
public record DynamicFlow(double pulse, double volume) {
  public DynamicFlow {
    Require.positive(pulse, "pulse width", "s");
    Require.positive(volume, "volume of a pulse", "m³");
  }
}
