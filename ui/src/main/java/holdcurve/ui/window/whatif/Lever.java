package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Changes;
import holdcurve.common.message.PartName;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** One quantity that a slider changes. */
final class Lever {
  /** What the fuel of a parked car may have, and what rooms have [°C]. */
  private static final double COLDEST = -10;

  private static final double WARMEST = 60;
  private static final double USUAL = 20;

  private final String name;
  private final String symbol;
  private final double least;
  private final double most;
  private final double asItIs;
  private final DoubleFunction<Change> change;
  private final DoubleProperty value;

  /**
   * @param least lowest value of the slider, in the unit shown; likewise {@code most} and {@code
   *     asItIs}
   * @param change what a value in that unit does
   */
  private Lever(
      String name,
      String symbol,
      double least,
      double most,
      double asItIs,
      DoubleFunction<Change> change) {
    this.name = name;
    this.symbol = symbol;
    this.least = least;
    this.most = most;
    this.asItIs = asItIs;
    this.change = change;
    this.value = new SimpleDoubleProperty(asItIs);
  }

  /** Set pressure, hose lengths, the pump, the damper, and how warm the fuel is. */
  static List<Lever> of(Circuit circuit) {
    List<Lever> levers = new ArrayList<>();
    circuit
        .partsOf(Regulator.KIND)
        .forEach(part -> levers.add(of(part, Regulator.SET, "set pressure", 0.5, 1.6)));
    circuit.partsOf(Hose.KIND).forEach(part -> levers.add(of(part, Hose.LENGTH, "length", 0.2, 3)));
    circuit
        .partsOf(Pump.KIND)
        .forEach(part -> levers.add(of(part, Pump.FREE_FLOW, "delivery", 0.2, 1.6)));
    for (Part damper : circuit.partsOf(Damper.KIND)) {
      levers.add(of(damper, Damper.STROKE_VOLUME, "volume", 0.05, 3));
      levers.add(of(damper, Damper.CENTRE, "softest at", 0.3, 2));
    }
    levers.add(
        new Lever(
            "Fuel at the pump stop",
            Unit.CELSIUS.symbol(),
            COLDEST,
            WARMEST,
            USUAL,
            shown -> Changes.fuelTemperature(Unit.CELSIUS.toSi(shown))));
    levers.add(new Lever("Fuel warmer than around it", "K", -5, 10, 0, Changes::warmth));
    return levers;
  }

  /**
   * @param low lowest value as a share of the present one [-]; likewise {@code high}
   */
  private static Lever of(Part part, Property property, String what, double low, double high) {
    Unit unit = property.unit();
    double now = part.value(property);
    double least = Math.max(property.least(), low * now);
    double most = Math.min(property.most(), high * now);
    return new Lever(
        PartName.of(part.id()) + ", " + what,
        unit.symbol(),
        unit.fromSi(least),
        unit.fromSi(most),
        unit.fromSi(now),
        shown -> Changes.set(part, property, unit.toSi(shown)));
  }

  String name() {
    return name;
  }

  double least() {
    return least;
  }

  double most() {
    return most;
  }

  /** The value, in the unit shown. */
  DoubleProperty valueProperty() {
    return value;
  }

  void reset() {
    value.set(asItIs);
  }

  /** What it does; empty where it stands as the circuit is. */
  Optional<Change> change() {
    return Math.abs(value.get() - asItIs) < 1e-9 * Math.max(1, Math.abs(asItIs))
        ? Optional.empty()
        : Optional.of(change.apply(value.get()));
  }

  /** The value with its unit; pressures in the one that the user wants. */
  String text(PressureFormat pressures) {
    return symbol.equals(Unit.BAR.symbol())
        ? pressures.text(Unit.BAR.toSi(value.get()))
        : String.format(Locale.ROOT, hasDegrees() ? "%.1f %s" : "%.2f %s", value.get(), symbol);
  }

  private boolean hasDegrees() {
    return symbol.equals("K") || symbol.equals(Unit.CELSIUS.symbol());
  }
}
