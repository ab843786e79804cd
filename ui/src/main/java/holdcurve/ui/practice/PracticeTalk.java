package holdcurve.ui.practice;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.input.Cancellation;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import holdcurve.training.PossibleAnswers;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.training.StatedOdds;
import holdcurve.training.Step;
import holdcurve.training.TrainingSession;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * An exercise in the terminal: asks what to do, shows what comes of it, and takes the answer.
 * Nothing of the hidden fault is shown here.
 */
public final class PracticeTalk {
  private static final int DIAL = 40;

  private final TrainingSession session;
  private final BufferedReader in;
  private final PrintWriter out;
  private final PressureUnit unit;
  private final double lapse;

  /**
   * @param unit in which the gauge is shown
   * @param lapse how many times faster than in truth readings come in [-]; infinite for at once
   */
  public PracticeTalk(
      TrainingSession session,
      BufferedReader in,
      PrintWriter out,
      PressureUnit unit,
      double lapse) {
    this.session = session;
    this.in = in;
    this.out = out;
    this.unit = unit;
    this.lapse = lapse;
  }

  /** The learner's last belief; empty if the input ended before it was given. */
  public Optional<StatedOdds> run() {
    introduce();
    while (true) {
      out.printf(
          Locale.ROOT,
          "%n%.0f of %.0f minutes used. What next? (number, s for steps, f for faults, a to"
              + " answer)%n",
          session.used(),
          session.exercise().minutes());
      Optional<String> line = ask();
      if (line.isEmpty()) {
        return Optional.empty();
      }
      switch (line.get().toLowerCase(Locale.ROOT)) {
        case "" -> {}
        case "s" -> steps();
        case "f" -> answers();
        case "a" -> {
          return answer();
        }
        default -> step(line.get());
      }
    }
  }

  private void introduce() {
    out.printf(
        "%s (level %d of 5)%n%n%s%n%n",
        session.exercise().title(), session.exercise().level(), session.exercise().story());
    Cautions.general().forEach(out::println);
    Cautions.texts(
            Caution.CLAMPS,
            Caution.DEAD_HEAD,
            Caution.COLD_LAMP,
            Caution.NOTHING_FIRES,
            Caution.INJECTORS_HELD)
        .forEach(out::println);
    out.println();
    steps();
  }

  private void steps() {
    List<Step> steps = session.exercise().steps();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      out.printf(Locale.ROOT, "%3d  %-58s %3.0f min%n", i + 1, step.words(), step.minutes());
    }
  }

  private void answers() {
    for (int i = 0; i < session.answers().size(); i++) {
      out.printf("%3d  %s%n", i + 1, session.answers().get(i).words());
    }
  }

  private void step(String text) {
    Optional<Integer> number = number(text, session.exercise().steps().size());
    if (number.isEmpty()) {
      out.println("Give the number of a step, or s, f or a.");
      return;
    }
    Step step = session.exercise().steps().get(number.get() - 1);
    if (!session.hasTimeFor(step)) {
      out.println("There is no time left for that. Choose a shorter step, or answer with a.");
      return;
    }
    out.println(
        "What do you expect it is? Such as 3=60 7=20 (per cent; f lists the faults), or Enter.");
    belief().ifPresent(before -> show(session.take(step, before)));
  }

  /** Asks until it understands; empty if the input ends. */
  private Optional<StatedOdds> belief() {
    while (true) {
      Optional<String> line = ask();
      if (line.isEmpty()) {
        return Optional.empty();
      }
      if (line.get().equalsIgnoreCase("f")) {
        answers();
        continue;
      }
      try {
        return Optional.of(session.belief(stated(line.get())));
      } catch (IllegalArgumentException e) {
        out.println(e.getMessage() + ". Try again.");
      }
    }
  }

  /** {@code 3=60 7+9=20}: numbers of answers, several at once joined by a plus, with per cent. */
  private Map<String, Double> stated(String line) {
    Map<String, Double> stated = new LinkedHashMap<>();
    for (String one : line.replace("%", "").trim().split("[\\s;]+")) {
      if (!one.isEmpty()) {
        String[] sides = one.split("=", 2);
        stated.put(id(sides[0]), sides.length < 2 ? 1 : percent(sides[1]));
      }
    }
    return stated;
  }

  private String id(String numbers) {
    List<Suspicion> all = session.answers();
    return PossibleAnswers.join(
        Arrays.stream(numbers.split("\\+"))
            .map(
                n ->
                    number(n, all.size())
                        .map(i -> all.get(i - 1).id())
                        .orElseThrow(
                            () -> new IllegalArgumentException("there is no fault '" + n + "'")))
            .toList());
  }

  private static double percent(String text) {
    try {
      return Double.parseDouble(text.replace(',', '.')) / 100;
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("'" + text + "' is no per cent", e);
    }
  }

  private static Optional<Integer> number(String text, int most) {
    if (!text.trim().matches("\\d{1,4}")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(text.trim());
    return number >= 1 && number <= most ? Optional.of(number) : Optional.empty();
  }

  private void show(TrainingSession.Taken taken) {
    taken.hold().ifPresent(this::needle);
    for (Finding finding : taken.found()) {
      out.println("  " + finding.inWords(unit));
    }
    out.flush();
  }

  private void needle(HoldTest hold) {
    double range = session.exercise().gauge().range();
    double before = 0;
    for (Reading reading : hold.log().hold()) {
      pause(reading.time() - before);
      before = reading.time();
      int place = (int) Math.round(reading.pressure() / range * DIAL);
      out.printf(
          Locale.ROOT,
          "  %2d:%02d  %9s  |%s^%s|%n",
          (int) reading.time() / 60,
          (int) reading.time() % 60,
          Message.of("%s", Message.pressure(reading.pressure())).in(unit),
          " ".repeat(Math.max(0, Math.min(DIAL, place))),
          " ".repeat(DIAL - Math.max(0, Math.min(DIAL, place))));
      out.flush();
    }
  }

  private void pause(double seconds) {
    try {
      Thread.sleep(Math.round(1000 * seconds / lapse));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      Cancellation.check();
    }
  }

  private Optional<StatedOdds> answer() {
    answers();
    out.println("What is it? Such as 3=90, two at once 3+7=90, unsure 3=50 7=30.");
    return belief();
  }

  private Optional<String> ask() {
    out.print("> ");
    out.flush();
    try {
      return Optional.ofNullable(in.readLine()).map(String::strip);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
