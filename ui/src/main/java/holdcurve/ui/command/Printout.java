package holdcurve.ui.command;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
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
  String said(Message message) {
    return message.in(unit);
  }

  /**
   * A pressure with its unit.
   *
   * @param pascals [Pa gauge]
   */
  String pressure(double pascals) {
    return Message.of("%s", Message.pressure(pascals)).in(unit);
  }

  /**
   * Likewise, its number alone.
   *
   * @param pascals [Pa gauge]
   */
  String number(double pascals) {
    return Message.of("%s", Message.number(pascals)).in(unit);
  }

  /** Prints a sentence in lines no longer than the terminal is wide. */
  void wrapped(String indent, Message message) {
    Wrapped.print(this, indent, said(message));
  }

  /** Prints several, each on lines of its own. */
  void wrapped(String indent, List<Message> messages) {
    messages.forEach(message -> wrapped(indent, message));
  }
}
