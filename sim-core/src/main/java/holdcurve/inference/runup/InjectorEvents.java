package holdcurve.inference.runup;

import holdcurve.record.log.LogEvent;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an event of a log says of the injectors: "injectors open", "injectors 50 %", "injectors
 * shut". A running engine draws too, but nobody knows how much.
 */
final class InjectorEvents {
  /** Duty where the injectors draw an unknown amount [-]. */
  static final double UNKNOWN = Double.NaN;

  private static final Pattern SHARE =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(?:%|percent|per cent)");
  private static final Pattern NOTHING =
      Pattern.compile(".*\\b(shut|closed?|off|stop|stops|stopped|stands)\\b.*");
  private static final Pattern ALL = Pattern.compile(".*\\b(open|opened|on)\\b.*");

  private InjectorEvents() {}

  /**
   * Share of the time that they are open from then on [-]; empty where it is about other things.
   */
  static OptionalDouble duty(LogEvent event) {
    String words = event.text().toLowerCase(Locale.ROOT);
    boolean injectors = words.contains("injector");
    if (event.kind() != LogEvent.Kind.INJECTORS) {
      return OptionalDouble.empty();
    }
    Matcher share = SHARE.matcher(words);
    if (injectors && share.find()) {
      double percent = Double.parseDouble(share.group(1).replace(',', '.'));
      return OptionalDouble.of(percent <= 100 ? percent / 100 : UNKNOWN);
    }
    if (NOTHING.matcher(words).matches()) {
      return OptionalDouble.of(0);
    }
    return OptionalDouble.of(injectors && ALL.matcher(words).matches() ? 1 : UNKNOWN);
  }
}
