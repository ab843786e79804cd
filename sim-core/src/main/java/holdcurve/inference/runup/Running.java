package holdcurve.inference.runup;

import holdcurve.inference.prior.PriorFile;
import holdcurve.physics.circuit.Unit;

/**
 * What isn't known of a running circuit, from the data file {@code priors.json}, which has the
 * sources. Spreads are standard deviations of a logarithm [-].
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
    PriorFile running = PriorFile.section("running");
    return new Running(
        running.value("pump_flow_spread"),
        running.value("pump_stall_spread"),
        running.value("filter_drop_spread"),
        running.value("regulator_gain_spread"),
        running.value("injector_flow_spread"),
        running.value("spin_up_s"),
        Unit.BAR.toSi(running.value("residual_bar")),
        Unit.BAR.toSi(running.value("model_error_bar")),
        running.value("model_error_length"),
        running.value("model_error_shared"));
  }
}
