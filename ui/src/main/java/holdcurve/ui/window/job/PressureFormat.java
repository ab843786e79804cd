package holdcurve.ui.window.job;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Pressures as the person at the window wants them: in bar, kPa or psi. */
public final class PressureFormat {
  /** Units to choose from, in the order of the switch. */
  public static final List<PressureUnit> CHOICES =
      List.of(PressureUnit.BAR, PressureUnit.KPA, PressureUnit.PSI);

  private static final Pattern NUMBER =
      Pattern.compile("[0-9]{1,5}([.,][0-9]{0,4})?|[.,][0-9]{1,4}");

  private final ObjectProperty<PressureUnit> unit = new SimpleObjectProperty<>(PressureUnit.BAR);

  public ObjectProperty<PressureUnit> unitProperty() {
    return unit;
  }

  public PressureUnit unit() {
    return unit.get();
  }

  /** Goes on to the next unit, round at the end. */
  public void next() {
    unit.set(CHOICES.get((CHOICES.indexOf(unit.get()) + 1) % CHOICES.size()));
  }

  /** Decimals in which a needle gauge is read. */
  public int decimals() {
    return decimals(unit.get());
  }

  /** Likewise, in a unit that may be another than the one shown. */
  public static int decimals(PressureUnit unit) {
    return switch (unit) {
      case BAR -> 2;
      case PSI -> 1;
      default -> 0;
    };
  }

  /**
   * @param pressure [Pa gauge]
   * @return the number alone, such as {@code 1.85}
   */
  public String number(double pressure) {
    return String.format(Locale.ROOT, "%." + decimals() + "f", unit.get().fromPascal(pressure));
  }

  /**
   * @param pressure [Pa gauge]
   * @return number and unit, such as {@code 1.85 bar}
   */
  public String text(double pressure) {
    return number(pressure) + " " + unit.get().symbol();
  }

  /** A sentence in the unit shown. */
  public String text(Message message) {
    return message.in(unit());
  }

  /** Sentences in the unit shown. */
  public List<String> texts(List<Message> messages) {
    return messages.stream().map(message -> message.in(unit())).toList();
  }

  /**
   * What a person typed, with decimal point or comma, in the unit shown.
   *
   * @return [Pa gauge]; empty if it is no number
   */
  public OptionalDouble parse(String typed) {
    return parse(typed, unit.get());
  }

  /** Likewise, in a unit that may be another than the one shown. */
  public static OptionalDouble parse(String typed, PressureUnit unit) {
    String plain = typed.strip();
    return NUMBER.matcher(plain).matches()
        ? OptionalDouble.of(unit.toPascal(Double.parseDouble(plain.replace(',', '.'))))
        : OptionalDouble.empty();
  }
}
