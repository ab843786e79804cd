package holdcurve.inference.runup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.physics.circuit.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * What isn't known of a running circuit, from the data file {@code running.json} beside this class,
 * which has the sources. Spreads are standard deviations of a logarithm [-].
 *
 * @param pumpFlow spread of a stated delivery
 * @param pumpStall spread of a stated highest pressure
 * @param filterDrop spread of a stated filter
 * @param regulatorGain spread of a stated gain
 * @param injectorFlow spread of a stated flow
 * @param spinUp from the relay closing to the pump delivering [s]
 * @param residual pressure left where nobody read it [Pa]
 * @param modelError of the model of a running circuit [Pa]
 * @param modelErrorLength over how much of ln(1 + t/0.5 s) it stays alike [-]
 * @param modelErrorShared share of its variance that is the same in all tests [-]
 */
record Running(
    double pumpFlow,
    double pumpStall,
    double filterDrop,
    double regulatorGain,
    double injectorFlow,
    double spinUp,
    double residual,
    double modelError,
    double modelErrorLength,
    double modelErrorShared) {

  /** The shipped data file. */
  static Running shipped() {
    try (InputStream in = Running.class.getResourceAsStream("running.json")) {
      JsonNode root = new ObjectMapper().readTree(in);
      return new Running(
          value(root, "pump_flow_spread"),
          value(root, "pump_stall_spread"),
          value(root, "filter_drop_spread"),
          value(root, "regulator_gain_spread"),
          value(root, "injector_flow_spread"),
          value(root, "spin_up_s"),
          Unit.BAR.toSi(value(root, "residual_bar")),
          Unit.BAR.toSi(value(root, "model_error_bar")),
          value(root, "model_error_length"),
          value(root, "model_error_shared"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double value(JsonNode root, String name) {
    return root.get(name).get("value").asDouble();
  }
}
