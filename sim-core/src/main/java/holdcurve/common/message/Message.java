package holdcurve.common.message;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence, or a part of one, whose pressures are written out when it is read.
 *
 * @param format as for {@link String#format}; a pressure stands as {@code %s}
 * @param arguments of the format; each {@link Pressure}, and each saying that stands in this one,
 *     is written in the reader's unit
 */
public record Message(String format, List<Object> arguments) {
  private static final Pattern STATED = Pattern.compile("\\b([0-9]+(?:\\.[0-9]+)?) bar\\b");

  /** A difference too small to show has no sign. */
  private static final Pattern NOUGHT = Pattern.compile("-0(\\.0+)?");

  /**
   * A pressure in a saying.
   *
   * @param pascals [Pa gauge]
   * @param named whether the unit follows the number
   * @param digits how many are written
   */
  public record Pressure(double pascals, boolean named, Digits digits) {
    String in(PressureUnit unit) {
      int further = digits == Digits.FINE || digits == Digits.LOGGED ? 1 : 0;
      int decimals = decimals(unit) + further;
      String signed = String.format(Locale.ROOT, "%." + decimals + "f", unit.fromPascal(pascals));
      String number = NOUGHT.matcher(signed).matches() ? signed.substring(1) : signed;
      boolean nought = digits == Digits.LOGGED && decimals > 1 && number.endsWith("0");
      String whole = nought ? number.substring(0, number.length() - 1) : number;
      String shown =
          digits == Digits.ROUND
              ? whole.replaceFirst("(\\.[0-9]*?)0+$", "$1").replaceFirst("\\.$", "")
              : whole;
      return named ? shown + " " + unit.symbol() : shown;
    }
  }

  /** How many digits a pressure is given. */
  public enum Digits {
    /** Those to which a needle gauge is read. */
    NEEDLE,
    /** One more. */
    FINE,
    /** Those, and one more where it isn't nought. */
    LOGGED,
    /** No noughts at the end. */
    ROUND
  }

  public Message {
    arguments = List.copyOf(arguments);
  }

  /**
   * @param arguments {@link Pressure}s, sayings and whatever else the format takes
   */
  public static Message of(String format, Object... arguments) {
    return new Message(format, Arrays.asList(arguments));
  }

  /** Words without a pressure in them. */
  public static Message plain(String words) {
    return of("%s", words);
  }

  /**
   * Words that state pressures as a number and {@code bar}, as names of sizes do: "leak at 2 bar".
   */
  public static Message stated(String words) {
    List<Object> pressures = new ArrayList<>();
    Matcher one = STATED.matcher(words.replace("%", "%%"));
    String format =
        one.replaceAll(
            found -> {
              pressures.add(round(PressureUnit.BAR.toPascal(Double.parseDouble(found.group(1)))));
              return "%s";
            });
    return new Message(format, pressures);
  }

  /** Several of those. */
  public static List<Message> plain(List<String> words) {
    return words.stream().map(Message::plain).toList();
  }

  /** Several as one, with semicolons between. */
  public static Message joined(List<Message> messages) {
    String places = String.join("; ", Collections.nCopies(messages.size(), "%s"));
    return new Message(places, List.copyOf(messages));
  }

  /** Several written out, in bar. */
  public static List<String> inBar(List<Message> messages) {
    return messages.stream().map(Message::toString).toList();
  }

  /** A number with its unit, such as {@code 1.45 bar}. */
  public static Pressure pressure(double pascals) {
    return new Pressure(pascals, true, Digits.NEEDLE);
  }

  /** A small difference with its unit, such as {@code 0.012 bar}. */
  public static Pressure difference(double pascals) {
    return new Pressure(pascals, true, Digits.FINE);
  }

  /** A number whose unit stands elsewhere, such as in {@code 1.05 to 1.45 bar}. */
  public static Pressure number(double pascals) {
    return new Pressure(pascals, false, Digits.NEEDLE);
  }

  /** A reading of a logger, such as {@code 1.453}. */
  public static Pressure logged(double pascals, boolean named) {
    return new Pressure(pascals, named, Digits.LOGGED);
  }

  /** A stated value with its unit, such as {@code 6 bar}. */
  public static Pressure round(double pascals) {
    return new Pressure(pascals, true, Digits.ROUND);
  }

  /** The least difference that is shown of a pressure, in its unit. */
  static double step(PressureUnit unit) {
    return Math.pow(10, -decimals(unit));
  }

  /** To what a needle gauge is read in a unit. */
  private static int decimals(PressureUnit unit) {
    return switch (unit) {
      case BAR, KGF_PER_CM2 -> 2;
      case PSI -> 1;
      case MPA -> 3;
      default -> 0;
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
    return argument instanceof Message message ? message.in(unit) : argument;
  }

  /** In bar. */
  @Override
  public String toString() {
    return in(PressureUnit.BAR);
  }
}
