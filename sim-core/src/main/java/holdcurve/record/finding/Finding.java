package holdcurve.record.finding;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import java.time.LocalDate;
import java.util.Optional;

/** Something found out at a circuit beside the gauge readings of a hold. */
public sealed interface Finding permits SeenAtMoment, DrawOff, DropTestResult {
  /** What was found, for a person: a part of a sentence, such as "feed hose dry". */
  String inWords();

  /** The same, its pressures still quantities. */
  default Message message() {
    return Message.plain(inWords());
  }

  /** The same with pressures in a unit. */
  default String inWords(PressureUnit unit) {
    return message().in(unit);
  }

  /** Id of the hold test during which it was; empty if outside one. */
  Optional<String> test();

  /** The day; empty if not noted. */
  Optional<LocalDate> date();

  /** The same, found on a day. */
  Finding on(LocalDate day);

  /** What was found, with its day in front if that was noted. */
  default String inDatedWords(PressureUnit unit) {
    return date().map(day -> day + ", ").orElse("") + inWords(unit);
  }
}
