package holdcurve.ui.practice;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.Message;
import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import holdcurve.training.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A debrief in words for an apprentice; one paragraph or table row a string. */
public final class DebriefText {
  private static final double NOTEWORTHY = 0.03e5;

  private final Exercise exercise;
  private final Debrief debrief;

  public DebriefText(Exercise exercise, Debrief debrief) {
    this.exercise = exercise;
    this.debrief = debrief;
  }

  /** What it was, and what the learner said. */
  public List<String> outcome() {
    List<String> text = new ArrayList<>();
    text.add("It was: " + debrief.truth().words() + ".");
    if (debrief.right().size() > 1) {
      text.add(
          "No step here can separate it from "
              + (debrief.right().size() - 1 == 1
                  ? "one other answer"
                  : (debrief.right().size() - 1) + " other answers")
              + ". Those count as right too.");
    }
    if (debrief.isPartOfTruth()) {
      text.add(
          "There were two faults, and you named one of them: " + debrief.named().words() + ".");
    }
    String sure = String.format(Locale.ROOT, "%.0f %%", 100 * debrief.answer());
    text.add(
        debrief.isRight()
            ? "You named it, and gave it " + sure + "."
            : "You named: "
                + debrief.named().words()
                + ". You gave the right answer "
                + sure
                + ".");
    return text;
  }

  /** What a step told, for a table. */
  public static String told(Debrief.Line line) {
    return line.isWasted()
        ? "nothing"
        : line.bits() < 0.5 ? "a little" : line.bits() < 1.5 ? "much" : "very much";
  }

  /** Which step told most, and which were wasted. */
  public List<String> steps() {
    List<String> text = new ArrayList<>();
    Optional<Debrief.Line> most =
        debrief.lines().stream().max(Comparator.comparingDouble(Debrief.Line::bits));
    most.filter(line -> !line.isWasted())
        .ifPresent(line -> text.add("Told most: " + line.step().words() + "."));
    debrief.lines().stream()
        .filter(Debrief.Line::isWasted)
        .forEach(
            line ->
                text.add(
                    String.format(
                        Locale.ROOT,
                        "Told nothing new: %s (%.0f minutes).",
                        line.step().words(),
                        line.step().minutes())));
    belief().ifPresent(text::add);
    return text;
  }

  /** The learner's certainty against what the evidence supported. */
  private Optional<String> belief() {
    if (debrief.lines().isEmpty()) {
      return Optional.of("You did no step, so any answer was a guess.");
    }
    double evidence = debrief.lines().get(debrief.lines().size() - 1).evidence();
    if (evidence < 0.5 && debrief.answer() < 0.5) {
      return Optional.of(untried());
    }
    double gap = debrief.answer() - evidence;
    if (Math.abs(gap) < 0.15) {
      return Optional.of("You were as sure as your tests allow.");
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            gap > 0
                ? "Your tests give the right answer only %.0f %%. You were right with some luck."
                : "Your tests give the right answer %.0f %%. You gave it less.",
            100 * evidence));
  }

  private String untried() {
    List<Step> done = debrief.lines().stream().map(Debrief.Line::step).toList();
    List<String> open =
        exercise.steps().stream()
            .filter(step -> !done.contains(step))
            .map(step -> "\u201c" + step.words() + "\u201d.")
            .toList();
    return "Your tests do not show it yet."
        + (open.isEmpty() ? "" : " Not tried: " + String.join(" ", open));
  }

  /** How the answer named would have looked; empty if it was right. */
  public List<Message> contrast() {
    List<Message> text = new ArrayList<>();
    for (Debrief.Contrast one : debrief.contrast()) {
      String hold = one.step().words();
      text.add(
          Math.abs(one.was() - one.would()) < NOTEWORTHY
              ? Message.of("%s: both look alike there, so this test cannot decide.", hold)
              : Message.of(
                  "%s. Your answer at its usual size would show %s after %.0f minutes; it showed"
                      + " %s.",
                  hold,
                  Message.pressure(one.would()),
                  one.step().watched(),
                  Message.pressure(one.was())));
    }
    return text;
  }

  /** What to remember. */
  public List<String> lesson() {
    return List.of(
        "On the next car: " + debrief.truth().symptoms(),
        Cautions.of(Caution.PETROL, Caution.RELIEVE, Caution.LOCAL_CODES),
        "What puts it right: " + debrief.truth().repair());
  }

  /** The score, and how it comes about. */
  public List<String> score() {
    return List.of(
        String.format(
            Locale.ROOT,
            "Score: %.0f of 100. Certainty %.0f, less %.0f for %s of the %.0f minutes.",
            debrief.score().total(),
            debrief.score().certainty(),
            debrief.score().time(),
            share(),
            exercise.minutes()),
        "Certainty: 100 for being sure and right, 0 for not knowing, less for being sure and"
            + " wrong. Honest odds score best.");
  }

  private String share() {
    double minutes = debrief.lines().stream().mapToDouble(line -> line.step().minutes()).sum();
    return String.format(Locale.ROOT, "%.0f", minutes);
  }
}
