package holdcurve.ui.command;

import holdcurve.saying.PressureUnit;
import holdcurve.saying.Saying;
import java.io.PrintWriter;
import java.util.List;

/** Where a command prints its result: every pressure comes out in the reader's unit. */
public final class Printout extends PrintWriter {
  private final PressureUnit unit;

  Printout(PrintWriter out, PressureUnit unit) {
    super(out, true);
    this.unit = unit;
  }

  /** The unit itself. */
  PressureUnit pressureUnit() {
    return unit;
  }

  /** The name of the unit, for headings. */
  String unit() {
    return unit.symbol();
  }

  /** A sentence in the unit. */
  String said(Saying saying) {
    return saying.in(unit);
  }

  /** Words that state pressures in bar, such as the name of a size, in the unit. */
  String stated(String words) {
    return Saying.stated(words).in(unit);
  }

  /**
   * A pressure with its unit.
   *
   * @param pascals [Pa gauge]
   */
  String pressure(double pascals) {
    return Saying.of("%s", Saying.pressure(pascals)).in(unit);
  }

  /**
   * Likewise, its number alone.
   *
   * @param pascals [Pa gauge]
   */
  String number(double pascals) {
    return Saying.of("%s", Saying.number(pascals)).in(unit);
  }

  /** Prints a sentence in lines no longer than the terminal is wide. */
  void wrapped(String indent, Saying saying) {
    Wrapped.print(this, indent, said(saying));
  }

  /** Prints several, each on lines of its own. */
  void wrapped(String indent, List<Saying> sayings) {
    sayings.forEach(saying -> wrapped(indent, saying));
  }
}
