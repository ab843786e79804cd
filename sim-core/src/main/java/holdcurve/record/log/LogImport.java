package holdcurve.record.log;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import java.util.List;
import java.util.Optional;

/**
 * A log that was read, and how it was understood.
 *
 * @param log the readings
 * @param understood short sentences for the user: separators, units, what was assumed, sorted, kept
 *     or passed over
 * @param passedOver every line that is neither blank, nor a comment, nor a heading, and gave
 *     neither a reading nor an event; {@code understood} names the first few of them and counts the
 *     rest
 * @param headingLines number of lines read as headings: 0, 1, or 2 where the units have their own
 * @param unit of the pressures as the heading names it; empty where it names none
 */
public record LogImport(
    GaugeLog log,
    List<Message> understood,
    List<PassedOver> passedOver,
    int headingLines,
    Optional<PressureUnit> unit) {
  public LogImport {
    understood = List.copyOf(understood);
    passedOver = List.copyOf(passedOver);
  }
}
