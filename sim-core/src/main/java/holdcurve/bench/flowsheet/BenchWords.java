package holdcurve.bench.flowsheet;

import holdcurve.common.message.Message;
import holdcurve.common.number.Celsius;
import holdcurve.common.number.Interval;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A bench report in sentences. */
final class BenchWords {
  /** From so many times the viscosity on, flow no longer goes by density alone: assumed [-]. */
  private static final double THICK = 3;

  private final BenchReport report;
  private final BenchLimits limits;
  private final LocalDate today;

  BenchWords(BenchReport report, BenchLimits limits, LocalDate today) {
    this.report = report;
    this.limits = limits;
    this.today = today;
  }

  BenchHeadline headline() {
    BenchHeadline.Kind kind = kind();
    List<String> said =
        new ArrayList<>(
            switch (kind) {
              case NOT_FIT -> troubles();
              case NOT_SETTLED -> List.of(unsure().orElseThrow());
              default -> List.of(flows());
            });
    if (kind != BenchHeadline.Kind.NO_FLOWS) {
      notMeasured().ifPresent(said::add);
    }
    return new BenchHeadline(kind, Message.plain(said));
  }

  private BenchHeadline.Kind kind() {
    List<InjectorReport> all = report.injectors();
    if (all.stream().anyMatch(InjectorReport::isOut)) {
      return BenchHeadline.Kind.OUT_OF_LINE;
    }
    if (!troubles().isEmpty()) {
      return BenchHeadline.Kind.NOT_FIT;
    }
    if (all.stream().allMatch(i -> i.standing() == Standing.NOT_MEASURED)) {
      return BenchHeadline.Kind.NO_FLOWS;
    }
    return all.stream().anyMatch(InjectorReport::isOpen)
        ? BenchHeadline.Kind.NOT_SETTLED
        : BenchHeadline.Kind.IN_LINE;
  }

  private List<String> troubles() {
    return report.injectors().stream()
        .filter(injector -> !injector.troubles().isEmpty())
        .map(i -> "Injector " + i.id() + " " + String.join("; ", i.troubles()) + ".")
        .toList();
  }

  private Optional<String> notMeasured() {
    List<String> ids =
        report.injectors().stream()
            .filter(i -> i.standing() == Standing.NOT_MEASURED)
            .map(InjectorReport::id)
            .toList();
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of("Flow not measured: " + String.join(", ", ids) + ".");
  }

  /** What the headline doesn't say. */
  List<Message> more() {
    List<String> said = new ArrayList<>();
    said.add(flows());
    unsure().ifPresent(said::add);
    said.addAll(troubles());
    headline().said().forEach(sentence -> said.remove(sentence.toString()));
    report.gain().ifPresent(gain -> said.add(gain(gain.middle())));
    mixture().ifPresent(said::add);
    report.flowLeft().ifPresent(left -> said.add(left(left)));
    report.sheet().serviced().map(day -> Shelf.words(day, today, limits)).ifPresent(said::add);
    return Message.plain(said);
  }

  private String flows() {
    List<InjectorReport> measured =
        report.injectors().stream().filter(i -> i.standing() != Standing.NOT_MEASURED).toList();
    if (measured.isEmpty()) {
      return "No flow can be compared. Only drops, spray and coils are judged.";
    }
    List<InjectorReport> out =
        measured.stream()
            .filter(InjectorReport::isOut)
            .sorted(Comparator.comparingDouble(i -> -Math.abs(departure(i).middle())))
            .toList();
    boolean after = report.latest() == Service.AFTER;
    String when = after ? "After the service " : "";
    long inLine = measured.stream().filter(i -> !i.isOpen()).count();
    if (out.isEmpty() && inLine < measured.size()) {
      return capital(
              when
                  + SheetNumbers.count((int) inLine)
                  + " of "
                  + SheetNumbers.count(measured.size())
                  + (inLine == 1 ? " is" : " are")
                  + " surely in line")
          + report.set(report.latest()).map(BenchWords::spread).orElse("")
          + ".";
    }
    if (out.isEmpty()) {
      return capital(when + allOf(measured.size()) + " in line")
          + ", within "
          + SheetNumbers.few(100 * limits.outOfLine())
          + " % of their middle"
          + report.set(report.latest()).map(BenchWords::spread).orElse("")
          + (after ? "." : ". Their flow needs no service.");
    }
    return capital(
            when
                + SheetNumbers.count(out.size())
                + " of "
                + SheetNumbers.count(measured.size())
                + (out.size() == 1 ? " is " : " are ")
                + (after ? "still " : "")
                + "out of line: ")
        + String.join(", ", out.stream().map(this::howFar).toList())
        + (after
            ? ". Match with others, or replace."
            : ". Injectors "
                + SheetNumbers.few(100 * limits.outOfLine())
                + " to "
                + SheetNumbers.few(100 * limits.farOut())
                + " % out of line are worth a service."
                + (out.get(0).standing() == Standing.FAR_OUT
                    ? " One further out may not come back."
                    : ""));
  }

  private static String allOf(int count) {
    return switch (count) {
      case 1 -> "the only one is";
      case 2 -> "both are";
      default -> "all " + SheetNumbers.count(count) + " are";
    };
  }

  private static Interval departure(InjectorReport injector) {
    return injector.now().worst().orElseThrow();
  }

  private String howFar(InjectorReport injector) {
    double d = departure(injector).middle();
    return injector.id() + " (" + SheetNumbers.percent(d) + (d < 0 ? " low)" : " high)");
  }

  private static String spread(SetFlow set) {
    return " (spread " + SheetNumbers.percent(set.spread()) + ")";
  }

  private Optional<String> unsure() {
    List<String> ids =
        report.injectors().stream().filter(InjectorReport::isOpen).map(InjectorReport::id).toList();
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (ids.size() == 1
                    ? "No. " + ids.get(0) + " is"
                    : "Nos. " + String.join(", ", ids) + " are")
                + " too close to the limit to call. Measure again before deciding.");
  }

  private String gain(double gain) {
    String brought = "The service brought about " + SheetNumbers.signed(gain) + " flow, ";
    if (gain < limits.leastGain()) {
      return brought
          + "less than the usual "
          + SheetNumbers.signed(limits.usualGain())
          + ". They were clean before, or still are dirty.";
    }
    return gain > limits.mostGain()
        ? brought
            + "more than the usual "
            + SheetNumbers.signed(limits.usualGain())
            + ". They were foul."
        : brought + "as a service usually does.";
  }

  /** The leanest and the richest cylinder, at the state that counts. */
  private Optional<String> mixture() {
    List<String> parts = new ArrayList<>();
    Mixture.underLoad(report)
        .map(Mixture::words)
        .ifPresent(w -> parts.add("Full load: " + w + "."));
    Mixture.atShortPulses(report)
        .map(Mixture::words)
        .ifPresent(
            words ->
                parts.add(
                    "Pulses of "
                        + SheetNumbers.few(1e3 * report.pulse().orElseThrow())
                        + " ms: "
                        + words
                        + "."));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of("Mixture against the engine's average. " + String.join(" ", parts));
  }

  private String left(Interval left) {
    return String.format(
        Locale.ROOT,
        "The set passes %.0f %% of what the maker states (90 %% range %.0f to %.0f %%)%s",
        100 * left.middle(),
        100 * left.low(),
        100 * left.high(),
        left.high() < 1 - limits.outOfLine() ? ". The whole set is low." : ".");
  }

  List<Message> notes() {
    List<Message> notes = new ArrayList<>(Message.plain(report.sheet().understood()));
    for (Service state : Service.values()) {
      boolean twice =
          state == Service.AFTER
              && report.sheet().has(Service.BEFORE)
              && report.sheet().benchBefore().equals(report.sheet().benchAfter());
      if (report.sheet().has(state) && !twice) {
        notes.add(carried(state));
      }
    }
    Bench bench = report.sheet().bench(report.latest());
    notes.add(
        Message.of(
            "Assumed error of the bench (90 %%): %.1f %% between two flows, %.1f %% of all together.",
            100 * FlowDeviations.TO_90_PERCENT * bench.repeatability(),
            100 * FlowDeviations.TO_90_PERCENT * bench.accuracy()));
    FlowPoint measured = bench.point();
    notes.add(Message.of("Density of %s: %s.", measured.fluid().name(), measured.fluid().source()));
    if (measured.viscosity() > THICK * report.point().viscosity()) {
      notes.add(
          Message.plain(
              "The bench's fluid is thicker than petrol. Flows carried over may be off by some per"
                  + " cent; comparisons hold."));
    }
    notes.add(
        Message.plain(
            "All limits are common practice, no source: flow, gain, drops, spray, coil, days on the"
                + " shelf."));
    return notes;
  }

  private Message carried(Service state) {
    FlowPoint bench = report.sheet().bench(state).point();
    return Message.of(
        "Measured at %s. Flows times %.3f give those at %s.",
        at(bench), bench.factorTo(report.point()), at(report.point()));
  }

  private static Message at(FlowPoint point) {
    return Message.of(
        "%s with %s at %.0f °C",
        Message.round(point.pressure()), point.fluid().name(), Celsius.of(point.temperature()));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
