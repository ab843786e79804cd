package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Changes;
import holdcurve.advice.whatif.PlainNumbers;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Unit;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A fault at a place of the circuit that can be added, to see what it would look like. */
record AddableFault(LeakFault fault, Site site) {
  /** Every fault at every place. May ask plugins, so call it in the background. */
  static List<AddableFault> of(Circuit circuit, FaultCatalogue catalogue) {
    List<AddableFault> all = new ArrayList<>();
    for (LeakFault fault : catalogue.faults()) {
      FaultCatalogue.sites(fault, circuit).forEach(site -> all.add(new AddableFault(fault, site)));
    }
    return all;
  }

  String words() {
    return fault.name() + " (" + site.where() + ")";
  }

  private FaultParameter size() {
    return fault.parameters().get(0);
  }

  private boolean isPressure() {
    return unit() == Unit.BAR;
  }

  private Unit unit() {
    return size().unit();
  }

  /** What its size means, with the unit. */
  String sizeWords(PressureFormat pressures) {
    String symbol = isPressure() ? pressures.unit().symbol() : unit().symbol();
    String name = pressures.text(size().words());
    return symbol.isEmpty() ? name : name + " [" + symbol + "]";
  }

  /** A usual size, as it would be typed. */
  String usualSize(PressureFormat pressures) {
    double usual = size().prior().at(0);
    return isPressure() ? pressures.number(usual) : PlainNumbers.number(unit().fromSi(usual));
  }

  /**
   * The fault in this size.
   *
   * @param typed in the unit of {@link #sizeWords}
   * @return empty if it is no positive number
   */
  Optional<Change> change(String typed, PressureFormat pressures) {
    try {
      double shown = Double.parseDouble(typed.strip().replace(',', '.'));
      return shown > 0 && Double.isFinite(shown)
          ? Optional.of(change(shown, pressures))
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private Change change(double shown, PressureFormat pressures) {
    double[] values = FaultParameter.usual(fault.parameters());
    values[0] = isPressure() ? pressures.unit().toPascal(shown) : unit().toSi(shown);
    String symbol = isPressure() ? pressures.unit().symbol() : unit().symbol();
    String amount = (PlainNumbers.number(shown) + " " + symbol).strip();
    return Changes.add(
        "added: " + fault.name().toLowerCase(Locale.ROOT) + " (" + amount + ")",
        condition -> fault.apply(condition, site, values));
  }
}
