package holdcurve.ui.window.circuit;

import holdcurve.common.message.PartName;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import holdcurve.ui.schematic.PartLabel;
import holdcurve.ui.window.job.PressureFormat;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;

/** Parts and their properties in words. */
final class PartWords {
  private static final MathContext DIGITS = new MathContext(4);

  private PartWords() {}

  /** The figure that tells a part from another of its kind; may be empty. */
  static String figure(Part part, PressureFormat pressures) {
    return PartLabel.telling(part)
        .map(telling -> value(part, telling, pressures) + " " + unit(telling, pressures))
        .orElse("");
  }

  /** Kind and id of a part, once where they are the same word. */
  static String title(Part part) {
    String kind = part.kind().title();
    String name = PartName.of(part.id());
    return kind.equalsIgnoreCase(name) ? kind : kind + ": " + name;
  }

  /** Value of a property as it is typed, in its unit. */
  static String value(Part part, Property property, PressureFormat pressures) {
    return number(property, part.value(property), pressures);
  }

  /**
   * @param si value [SI]
   */
  static String number(Property property, double si, PressureFormat pressures) {
    double shown =
        isPressure(property) ? pressures.unit().fromPascal(si) : property.unit().fromSi(si);
    return shown == 0
        ? "0"
        : new BigDecimal(shown).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** Symbol of the unit in which a property is shown. */
  static String unit(Property property, PressureFormat pressures) {
    return isPressure(property) ? pressures.unit().symbol() : property.unit().symbol();
  }

  /** From what to what a property may be set. */
  static String limits(Property property, PressureFormat pressures) {
    return number(property, property.least(), pressures)
        + " to "
        + number(property, property.most(), pressures)
        + " "
        + unit(property, pressures);
  }

  static boolean isPressure(Property property) {
    return property.unit() == Unit.BAR;
  }

  /** Those that most people know of their car; the others are seldom set. */
  private static final Set<Property> USUAL =
      Set.of(
          Hose.LENGTH,
          Hose.BORE,
          Hose.CLAMPABLE,
          RigidPipe.LENGTH,
          RigidPipe.BORE,
          Regulator.SET,
          Injector.COUNT,
          Injector.STATIC_FLOW,
          Damper.CENTRE);

  /** Whether a property is shown at once. */
  static boolean isUsual(Part part, Property property) {
    return part.states(property) || USUAL.contains(property);
  }

  /** A stem as a person says it. */
  static String name(Property property) {
    String words = property.stem().replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
