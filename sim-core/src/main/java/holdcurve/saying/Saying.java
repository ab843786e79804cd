package holdcurve.saying;

import holdcurve.log.PressureUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A sentence, or a part of one, whose pressures are written out when it is read.
 *
 * @param format as for {@link String#format}; a pressure stands as {@code %s}
 * @param arguments of the format; each {@link Pressure}, and each saying that stands in this one,
 *     is written in the reader's unit
 */
public record Saying(String format, List<Object> arguments) {
  /**
   * A pressure in a saying.
   *
   * @param pascals [Pa gauge]
   * @param named whether the unit follows the number
   */
  public record Pressure(double pascals, boolean named) {
    String in(PressureUnit unit) {
      String number = String.format(Locale.ROOT, decimals(unit), unit.fromPascal(pascals));
      return named ? number + " " + unit.symbol() : number;
    }
  }

  public Saying {
    arguments = List.copyOf(arguments);
  }

  /**
   * @param arguments {@link Pressure}s, sayings and whatever else the format takes
   */
  public static Saying of(String format, Object... arguments) {
    return new Saying(format, Arrays.asList(arguments));
  }

  /** Words without a pressure in them. */
  public static Saying plain(String words) {
    return of("%s", words);
  }

  /** A number with its unit, such as {@code 1.45 bar}. */
  public static Pressure pressure(double pascals) {
    return new Pressure(pascals, true);
  }

  /** A number whose unit stands elsewhere, such as in {@code 1.05 to 1.45 bar}. */
  public static Pressure number(double pascals) {
    return new Pressure(pascals, false);
  }

  /** To what a needle gauge is read in a unit. */
  private static String decimals(PressureUnit unit) {
    return switch (unit) {
      case BAR, KGF_PER_CM2 -> "%.2f";
      case PSI -> "%.1f";
      case MPA -> "%.3f";
      default -> "%.0f";
    };
  }

  /** Written out for a reader who wants pressures in this unit. */
  public String in(PressureUnit unit) {
    Object[] written = arguments.stream().map(one -> written(one, unit)).toArray();
    return String.format(Locale.ROOT, format, written);
  }

  private static Object written(Object argument, PressureUnit unit) {
    if (argument instanceof Pressure pressure) {
      return pressure.in(unit);
    }
    return argument instanceof Saying saying ? saying.in(unit) : argument;
  }

  /** In bar. */
  @Override
  public String toString() {
    return in(PressureUnit.BAR);
  }
}
