package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A pressure as a person typed it, with its unit or without.
 *
 * @param typed as it stands on the command line
 * @param value in the unit
 * @param unit that follows the number; empty where none does
 */
record StatedPressure(String typed, double value, Optional<PressureUnit> unit) {
  private static final Pattern FORM =
      Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,6})?)\\s*([^0-9\\s].*)?");

  /** Takes off binary tails, and nothing that a gauge shows. */
  private static final MathContext DIGITS = new MathContext(10);

  /** Understands {@code 2.1}, {@code 2,1bar} and {@code "30 psi"}. */
  static final class Typed implements ITypeConverter<StatedPressure> {
    @Override
    public StatedPressure convert(String typed) {
      Matcher form = FORM.matcher(typed.strip());
      Optional<PressureUnit> unit =
          form.matches() && form.group(2) != null
              ? PressureUnit.of(form.group(2))
              : Optional.empty();
      if (!form.matches() || form.group(2) != null && unit.isEmpty()) {
        throw new TypeConversionException(
            "'" + typed + "' is no pressure; write it as 2.1, 2.1bar, 210kPa or 30psi.");
      }
      double value = Double.parseDouble(form.group(1).replace(',', '.'));
      return new StatedPressure(typed, value, unit);
    }
  }

  /**
   * In bar, as files have it.
   *
   * @param usual the unit where none was typed
   */
  double bar(PressureUnit usual) {
    double bar = PressureUnit.BAR.fromPascal(unit.orElse(usual).toPascal(value));
    return BigDecimal.valueOf(bar).round(DIGITS).doubleValue();
  }
}
