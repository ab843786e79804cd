package holdcurve.ui.window.benchsheet;

import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.Fitness;
import holdcurve.bench.flowsheet.FlowReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import holdcurve.common.text.Rounded;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far one injector is out of line, as it is drawn.
 *
 * @param id number or name
 * @param departure from the middle of the set [-]
 * @param earlier the same before cleaning, where it was measured then too
 * @param words the same as text, with where it stands
 * @param more drip, spray, coil, flow; empty for nothing
 * @param good whether it can go back
 */
record DepartureLine(
    String id,
    Interval departure,
    Optional<Interval> earlier,
    String words,
    String more,
    boolean good) {
  /** For an injector whose flow was measured. */
  static DepartureLine of(InjectorReport injector, BenchLimits limits) {
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
    Optional<Interval> earlier =
        injector.after().isPresent()
            ? injector.before().flatMap(FlowReport::worst)
            : Optional.empty();
    List<String> more = new ArrayList<>(injector.troubles());
    injector
        .gain()
        .ifPresent(
            gain -> more.add(String.format(Locale.ROOT, "flow %+.0f %%", 100 * gain.middle())));
    if (injector.troubles().stream().noneMatch(trouble -> trouble.startsWith("sprays"))) {
      spray(injector, limits).ifPresent(more::add);
    }
    if (injector.fitness() != Fitness.FIT && injector.fitness() != Fitness.NOT_MEASURED) {
      more.add(0, injector.fitness().words());
    }
    return new DepartureLine(injector.id(), d, earlier, words, String.join("; ", more), good);
  }

  /** Such as "spray: streaky, now even cone". */
  private static Optional<String> spray(InjectorReport injector, BenchLimits limits) {
    Optional<String> was =
        injector.before().flatMap(f -> f.readings().spray()).map(limits::sprayWord);
    Optional<String> is =
        injector.after().flatMap(f -> f.readings().spray()).map(limits::sprayWord);
    if (was.isPresent() && is.isPresent()) {
      return Optional.of("spray: " + was.get() + ", now " + is.get());
    }
    return was.or(() -> is).map(word -> "spray: " + word);
  }

  /** For an injector that was fired in a drop test. */
  static DepartureLine of(InjectorDrop injector) {
    Interval d = injector.departure();
    String words =
        String.format(
            Locale.ROOT,
            "%+.0f %% (%+.0f to %+.0f), %s",
            Rounded.whole(100 * d.middle()),
            Rounded.whole(100 * d.low()),
            Rounded.whole(100 * d.high()),
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
    boolean good =
        injector.moves()
            && !injector.staysOpen()
            && (!injector.sure() || injector.standing() == Standing.IN_LINE);
    return new DepartureLine(
        "Injector " + injector.id() + ", fired " + injector.firings() + " ×",
        d,
        Optional.empty(),
        words,
        more,
        good);
  }

  private static String standing(InjectorDrop injector) {
    if (injector.staysOpen()) {
      return "doesn't shut";
    }
    if (!injector.moves()) {
      return "no drop";
    }
    if (!injector.sure()) {
      return "not settled";
    }
    return injector.standing() == Standing.IN_LINE
        ? "in line"
        : injector.departure().middle() < 0 ? "low" : "high";
  }
}
