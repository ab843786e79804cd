package holdcurve.ui.report;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.FaultSize;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers with their units, as a report shows them. */
final class ReportFigures {
  private ReportFigures() {}

  /**
   * @param time [s]
   */
  static String minutes(double time) {
    return plain(time / 60, 2) + " min";
  }

  /** How bad a fault is, with its 90 % range. */
  static String size(FaultSize size, PressureUnit shown) {
    Unit unit = size.unit();
    return String.format(
        Locale.ROOT,
        "%s: %s %s (%s to %s)",
        Message.stated(size.name()).in(shown),
        figures(unit.fromSi(size.value().middle())),
        unit.symbol(),
        figures(unit.fromSi(size.value().low())),
        figures(unit.fromSi(size.value().high())));
  }

  /** What the circuit file states of a part. */
  static String stated(Part part, PressureUnit shown) {
    return part.kind().properties().stream()
        .filter(part::states)
        .map(property -> stated(property, part.value(property), shown))
        .collect(Collectors.joining(", "));
  }

  private static String stated(Property property, double value, PressureUnit shown) {
    String name = property.stem().replace('_', ' ');
    if (property.unit() == Unit.FLAG) {
      return value != 0 ? name : "not " + name;
    }
    return name + " " + value(property, value, shown);
  }

  /** A property's value [SI] in its own unit, or a pressure in the reader's. */
  static String value(Property property, double value, PressureUnit shown) {
    if (property.unit() == Unit.BAR) {
      return Message.of("%s", Message.round(value)).in(shown);
    }
    return (plain(property.unit().fromSi(value), 4) + " " + property.unit().symbol()).strip();
  }

  /** Two figures, with their nought: 0.30 beside 0.22 to 0.39. */
  private static String figures(double value) {
    return Math.abs(value) >= 10 || value == 0
        ? plain(value, 2)
        : new BigDecimal(value)
            .setScale(1 - (int) Math.floor(Math.log10(Math.abs(value))), RoundingMode.HALF_EVEN)
            .toPlainString();
  }

  private static String plain(double value, int digits) {
    return value == 0
        ? "0"
        : new BigDecimal(value)
            .round(new MathContext(Math.max(digits, (int) Math.ceil(Math.log10(Math.abs(value))))))
            .stripTrailingZeros()
            .toPlainString();
  }
}
