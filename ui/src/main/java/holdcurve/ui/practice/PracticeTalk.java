package holdcurve.ui.practice;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.input.Cancellation;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.text.WrappedText;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import holdcurve.training.PossibleAnswers;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.training.RepairChoice;
import holdcurve.training.StatedOdds;
import holdcurve.training.Step;
import holdcurve.training.TrainingCar;
import holdcurve.training.TrainingSession;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
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
  private static final int STRIP = 40;

  /** Wide enough to be read to a twentieth of a bar. */
  private static final int DIAL = 66;

  private final TrainingSession session;
  private final BufferedReader in;
  private final PrintWriter out;
  private final PressureUnit unit;
  private final double lapse;
  private final boolean byDial;

  /**
   * @param unit in which the gauge is shown
   * @param lapse how many times faster than in truth readings come in [-]; infinite for at once
   * @param byDial whether the learner reads the needle and types what it shows
   */
  public PracticeTalk(
      TrainingSession session,
      BufferedReader in,
      PrintWriter out,
      PressureUnit unit,
      double lapse,
      boolean byDial) {
    this.session = session;
    this.in = in;
    this.out = out;
    this.unit = unit;
    this.lapse = lapse;
    this.byDial = byDial;
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
    if (session.taken().size() == TrainingSession.MOST_STEPS) {
      out.println("Twelve steps are the most at one car. Answer with a.");
      return;
    }
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
    if (taken.hold().isPresent() && byDial) {
      readDial((Step.Hold) taken.step());
    } else {
      taken.hold().ifPresent(this::needle);
    }
    for (Finding finding : taken.found()) {
      out.println("  " + finding.inWords(unit));
    }
    out.flush();
  }

  private void needle(HoldTest hold) {
    double before = 0;
    for (Reading reading : hold.log().hold()) {
      pause(reading.time() - before);
      before = reading.time();
      out.printf(
          "  %s  %9s  %s%n",
          clock(before), written(reading.pressure()), dial(reading.pressure(), STRIP));
      out.flush();
    }
  }

  /** The needle over its scale; what the learner types is what is judged. */
  private void readDial(Step.Hold hold) {
    out.println("Type what the needle shows, in " + unit.symbol() + ", or Enter to leave it out.");
    double[] times = TrainingCar.readingTimes(hold.watched());
    double[] needle = session.car().needle(hold, session.taken().size() - 1, times);
    List<Reading> typed = new ArrayList<>();
    out.println("         " + scale());
    for (int i = 0; i < times.length; i++) {
      pause(times[i] - (i == 0 ? 0 : times[i - 1]));
      out.printf("  %s  %s%n", clock(times[i]), dial(needle[i], DIAL));
      Optional<Double> pressure = pressure();
      if (pressure.isPresent()) {
        typed.add(Reading.of(times[i], pressure.get()));
      }
    }
    if (typed.size() >= TrainingSession.FEWEST_READINGS) {
      session.read(typed);
    } else {
      out.println("Fewer than two readings tell nothing, so a practised eye reads this hold.");
      session.taken().get(session.taken().size() - 1).hold().ifPresent(this::needle);
    }
  }

  /** Asks until it is a number on the gauge; empty for none [Pa gauge]. */
  private Optional<Double> pressure() {
    while (true) {
      String line = ask().orElse("");
      if (line.isEmpty()) {
        return Optional.empty();
      }
      try {
        double pressure = unit.toPascal(Double.parseDouble(line.replace(',', '.')));
        if (pressure >= 0 && pressure <= session.exercise().gauge().most()) {
          return Optional.of(pressure);
        }
        out.println(written(pressure) + " is not on this gauge. Type it again.");
      } catch (NumberFormatException e) {
        out.println("'" + line + "' is no number. Type it again.");
      }
    }
  }

  private static String clock(double seconds) {
    return String.format(Locale.ROOT, "%2d:%02d", (int) seconds / 60, (int) seconds % 60);
  }

  private String written(double pressure) {
    return Message.of("%s", Message.pressure(pressure)).in(unit);
  }

  private String dial(double pressure, int width) {
    double share = pressure / session.exercise().gauge().range();
    int place = (int) Math.max(0, Math.min(width, Math.round(share * width)));
    return "|" + " ".repeat(place) + "^" + " ".repeat(width - place) + "|";
  }

  /** Numbers over the strip, at its quarters. */
  private String scale() {
    StringBuilder scale = new StringBuilder(" ");
    for (int i = 0; i <= 4; i++) {
      String number =
          Message.of("%s", Message.round(i * session.exercise().gauge().range() / 4)).in(unit);
      int at = 1 + i * DIAL / 4;
      scale.append(" ".repeat(Math.max(0, at - scale.length()))).append(number.split(" ")[0]);
    }
    return scale.toString();
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
    Optional<StatedOdds> answer = belief();
    while (answer.isPresent() && answer.get().equals(session.even())) {
      out.println("You gave no odds, so every answer counts alike. Is that meant? (y or n)");
      Optional<String> line = ask();
      if (line.isEmpty() || line.get().toLowerCase(Locale.ROOT).startsWith("y")) {
        return answer;
      }
      out.println("Then give your odds.");
      answer = belief();
    }
    return answer;
  }

  /** The repairs chosen; none if the input ends. */
  public List<RepairChoice.Option> repairs(RepairChoice choice) {
    List<RepairChoice.Option> options = choice.options();
    out.println();
    out.println("What would you do? Each repair costs the owner money.");
    for (int i = 0; i < options.size(); i++) {
      String number = String.format(Locale.ROOT, "%3d  ", i + 1);
      WrappedText.of(number, options.get(i).words()).lines().forEach(out::println);
    }
    out.println("Give the numbers, such as 2 or 1 4.");
    while (true) {
      Optional<String> line = ask();
      if (line.isEmpty()) {
        return List.of();
      }
      List<Optional<Integer>> numbers =
          Arrays.stream(line.get().split("[\\s,;]+")).map(n -> number(n, options.size())).toList();
      if (numbers.stream().allMatch(Optional::isPresent)) {
        return numbers.stream().map(n -> options.get(n.get() - 1)).distinct().toList();
      }
      out.println("Give numbers from 1 to " + options.size() + ".");
    }
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
