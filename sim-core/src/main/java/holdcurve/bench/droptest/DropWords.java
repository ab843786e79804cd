package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A drop report in sentences. */
final class DropWords {
  /** A wait from which the idle fall ought to be known [s]. */
  private static final double LONG_WAIT = 3;

  private final DropReport report;
  private final TrappedFuel fuel;
  private final BenchLimits limits;

  DropWords(DropReport report, TrappedFuel fuel, BenchLimits limits) {
    this.report = report;
    this.fuel = fuel;
    this.limits = limits;
  }

  List<Message> verdict() {
    List<Message> said = new ArrayList<>();
    List<InjectorDrop> out =
        report.injectors().stream()
            .filter(i -> i.moves() && i.standing() != Standing.IN_LINE && i.sure())
            .toList();
    List<String> open =
        report.injectors().stream()
            .filter(i -> i.moves() && !i.sure())
            .map(InjectorDrop::id)
            .toList();
    report.injectors().stream()
        .filter(InjectorDrop::staysOpen)
        .forEach(
            i ->
                said.add(
                    Message.plain(
                        "Injector "
                            + i.id()
                            + " doesn't shut: the needle went on falling after it. That is a"
                            + " leak.")));
    report.injectors().stream()
        .filter(i -> !i.moves())
        .forEach(
            i ->
                said.add(
                    Message.plain(
                        "Injector "
                            + i.id()
                            + " doesn't move the needle: it is blocked, or its coil or plug is"
                            + " dead.")));
    for (InjectorDrop injector : out) {
      said.add(Message.plain(low(injector)));
    }
    if (out.isEmpty() && said.isEmpty()) {
      said.add(
          open.isEmpty()
              ? Message.of(
                  "All are in line: within %.0f %% of the middle one.", 100 * limits.outOfLine())
              : Message.plain("None is surely out of line yet."));
    }
    if (!open.isEmpty()) {
      said.add(Message.plain("Not settled: " + String.join(", ", open) + "."));
    }
    said.add(repeats(open.isEmpty()));
    if (startsAlike()) {
      said.add(
          Message.plain(
              "Start from a slightly different pressure each time. Else the gauge rounds alike, and"
                  + " repeats teach little."));
    }
    return said;
  }

  private String low(InjectorDrop injector) {
    Interval d = injector.departure();
    return String.format(
        Locale.ROOT,
        "Injector %s is %s: %+.0f %% against the middle one (90 %% range %+.0f to %+.0f %%), %s.",
        injector.id(),
        d.middle() < 0 ? "low" : "high",
        100 * d.middle(),
        100 * d.low(),
        100 * d.high(),
        "worth a service");
  }

  private Message repeats(boolean settled) {
    RepeatAdvice advice = report.advice();
    Message gauge =
        Message.of(
            "(drops of %s, gauge read to %s)",
            Message.pressure(report.test().meanDrop()),
            Message.pressure(report.test().resolution()));
    if (advice.isEnough()) {
      return settled
          ? Message.of("Fired often enough: %d times each %s.", advice.fewest(), gauge)
          : Message.of(
              "%d firings each usually settle it %s. Those left open lie near the limit, or read"
                  + " alike.",
              advice.repeats(), gauge);
    }
    Message more =
        Message.of(
            "About %d firings of each would settle it %s. Do %d more",
            advice.repeats(), gauge, advice.repeats() - advice.fewest());
    return advice.repeatsIfTwice() < advice.repeats()
        ? Message.of("%s. Fired twice as long, %d would do.", more, advice.repeatsIfTwice())
        : Message.of("%s.", more);
  }

  /** All readings before a firing within a step of each other. */
  private boolean startsAlike() {
    double least = report.test().firings().stream().mapToDouble(Firing::before).min().orElseThrow();
    double most = report.test().firings().stream().mapToDouble(Firing::before).max().orElseThrow();
    return most - least < 1.5 * report.test().resolution() && !settledAll();
  }

  private boolean settledAll() {
    return report.injectors().stream().allMatch(InjectorDrop::sure);
  }

  List<Message> notes() {
    List<Message> notes = new ArrayList<>(Message.plain(report.test().understood()));
    notes.add(
        Message.of(
            "Corrected for the falling pressure while an injector is open, and for %s lost without"
                + " firing.",
            Message.difference(report.idleFall())));
    if (report.test().idleFalls().isEmpty() && report.test().shot().pause() > LONG_WAIT) {
      notes.add(
          Message.plain(
              "No idle fall was read, so leaks and hose stretch count as fuel passed. Read the gauge over a minute without firing."));
    }
    notes.add(
        fuel.isKnown()
            ? Message.of(
                "The circuit takes %.1f mL for each %s, known to a factor of %.1f (90 %%). So are"
                    + " the flows; comparisons are surer.",
                fuel.compliance(report.pressure()) * 1e11,
                Message.round(1e5),
                Math.exp(1.645 * fuel.spread()))
            : Message.plain("Without a circuit only comparisons can be given, no flows."));
    notes.add(
        Message.plain(
            "Assumed: readings good to a third of the gauge's step, firings alike to 1 %. Limits"
                + " are those of the bench sheet."));
    return notes;
  }
}
