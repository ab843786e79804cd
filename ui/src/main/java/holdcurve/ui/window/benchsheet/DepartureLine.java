package holdcurve.ui.window.benchsheet;

import holdcurve.infer.Interval;
import holdcurve.injector.InjectorReport;
import java.util.Locale;

/**
 * How far one injector is out of line, as it is drawn.
 *
 * @param id number or name
 * @param departure from the middle of the set [-]
 * @param words the same as text, with where it stands
 * @param more drip, spray, coil; empty for nothing
 * @param good whether it can go back
 */
record DepartureLine(String id, Interval departure, String words, String more, boolean good) {
  /** For an injector whose flow was measured. */
  static DepartureLine of(InjectorReport injector) {
    Interval d = injector.now().worst().orElse(new Interval(0, 0, 0));
    boolean measured = injector.now().worst().isPresent();
    String words =
        measured
            ? String.format(
                Locale.ROOT,
                "%+.1f ± %.1f %%, %s%s",
                100 * d.middle(),
                50 * (d.high() - d.low()),
                injector.standing().words(),
                injector.sure() ? "" : "?")
            : injector.standing().words();
    boolean good =
        injector.troubles().isEmpty() && injector.standing() == holdcurve.injector.Standing.IN_LINE;
    return new DepartureLine(injector.id(), d, words, String.join("; ", injector.troubles()), good);
  }
}
