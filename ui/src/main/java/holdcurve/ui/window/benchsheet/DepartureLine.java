package holdcurve.ui.window.benchsheet;

import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import java.util.Locale;

/**
 * How far one injector is out of line, as it is drawn.
 *
 * @param id number or name
 * @param departure from the middle of the set [-]
 * @param words the same as text, with where it stands
 * @param more drip, spray, coil, flow; empty for nothing
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
    boolean good = injector.troubles().isEmpty() && injector.standing() == Standing.IN_LINE;
    return new DepartureLine(injector.id(), d, words, String.join("; ", injector.troubles()), good);
  }

  /** For an injector that was fired in a drop test. */
  static DepartureLine of(InjectorDrop injector) {
    Interval d = injector.departure();
    String words =
        String.format(
            Locale.ROOT,
            "%+.0f %% (%+.0f to %+.0f), %s",
            100 * d.middle(),
            100 * d.low(),
            100 * d.high(),
            standing(injector));
    String more =
        injector
            .flow()
            .map(
                flow ->
                    String.format(
                        Locale.ROOT,
                        "passes %.0f mL/min (%.0f to %.0f)",
                        flow.middle() * 60e6,
                        flow.low() * 60e6,
                        flow.high() * 60e6))
            .orElse("");
    boolean good = !injector.sure() || injector.standing() == Standing.IN_LINE;
    return new DepartureLine(
        "Injector " + injector.id() + ", fired " + injector.firings() + " ×", d, words, more, good);
  }

  private static String standing(InjectorDrop injector) {
    if (!injector.sure()) {
      return "not settled";
    }
    return injector.standing() == Standing.IN_LINE
        ? "in line"
        : injector.departure().middle() < 0 ? "low" : "high";
  }
}
