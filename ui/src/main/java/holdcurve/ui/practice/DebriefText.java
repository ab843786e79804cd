package holdcurve.ui.practice;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Interpolation;
import holdcurve.record.log.Reading;
import holdcurve.training.Debrief;
import holdcurve.training.RepairScore;
import holdcurve.training.Score;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A debrief in words for an apprentice; one paragraph or table row a string. */
public final class DebriefText {
  /** Less can't be told apart on a dial: assumed [Pa]. */
  private static final double NOTEWORTHY = 0.03e5;

  /** Farther off than this a reading is no mere unsteadiness of the eye: assumed [Pa]. */
  private static final double MISREAD = 0.1e5;

  private final Debrief debrief;

  public DebriefText(Debrief debrief) {
    this.debrief = debrief;
  }

  /** Score and answer. */
  public List<String> outcome() {
    List<String> text = new ArrayList<>();
    text.add(
        String.format(
            Locale.ROOT,
            "Score: %.0f of %d. %s.",
            debrief.score().total(),
            Score.MOST,
            debrief.isRight() ? "Found" : debrief.isPartOfTruth() ? "Half found" : "Wrong part"));
    text.add("It was: " + debrief.truth().words() + ".");
    if (debrief.right().size() > 1) {
      text.add(
          "No test here can separate it from "
              + (debrief.right().size() == 2
                  ? "one other answer"
                  : (debrief.right().size() - 1) + " other answers")
              + ". Those count as right too.");
    }
    if (debrief.isPartOfTruth()) {
      text.add(
          "There were two faults, and you named one of them: " + debrief.named().words() + ".");
    }
    if (!debrief.isRight() && !debrief.isPartOfTruth()) {
      text.add("You named: " + debrief.named().words() + ".");
    }
    text.add(
        String.format(
            Locale.ROOT,
            "You gave the right answer %.0f %%; your tests give it %.0f %%.",
            100 * debrief.answer(),
            100 * debrief.supported()));
    if (!debrief.explained()) {
      text.add("No circuit gives readings like yours. Read the dial again on the next car.");
    }
    return text;
  }

  /**
   * One line of the score.
   *
   * @param why in a sentence
   */
  public record Points(String name, double points, int most, String why) {
    /** Such as "34 of 60". */
    public String shown() {
      return String.format(Locale.ROOT, "%s of %d", rounded(points), most);
    }
  }

  /** How the score comes about. */
  public List<Points> points() {
    Score score = debrief.score();
    return List.of(
        new Points("Odds", score.odds(), Score.ODDS, odds(score)),
        new Points("Tests", score.tests(), Score.TESTS, tests()),
        new Points("Repair", score.repair(), Score.REPAIR, repair()));
  }

  private String odds(Score score) {
    if (debrief.lines().isEmpty()) {
      return "Without a test, any odds are a guess.";
    }
    return score.odds() < 0
        ? "You were surer than your tests allow."
        : "Honest odds after your tests earn " + rounded(score.possible()) + ".";
  }

  private String tests() {
    if (debrief.lines().isEmpty()) {
      return "You did no test.";
    }
    long well =
        debrief.lines().stream().filter(line -> line.worth().value() >= WELL_CHOSEN).count();
    return well + " of " + debrief.lines().size() + " well chosen, in " + minutes() + " minutes.";
  }

  /** From this value on a step counts as well chosen in words: assumed [-]. */
  private static final double WELL_CHOSEN = 0.5;

  private String minutes() {
    return String.format(Locale.ROOT, "%.0f", debrief.minutes());
  }

  private String repair() {
    if (debrief.repair().isEmpty()) {
      return "No repair was chosen.";
    }
    RepairScore repair = debrief.repair().get();
    if (repair.points() <= 0) {
      return "It does not put right what was wrong.";
    }
    if (debrief.lines().isEmpty()) {
      return "Without a test, a right repair is luck.";
    }
    if (debrief.supported() < LUCK) {
      return "Right with some luck: your tests hardly point at it.";
    }
    return repair.points() < RepairScore.MOST
        ? "Partly right: see below."
        : "Right, and your tests point at it.";
  }

  /** Below this the tests hardly point at the answer: assumed [-]. */
  private static final double LUCK = 0.3;

  private static String rounded(double points) {
    String number = String.format(Locale.ROOT, "%.0f", points);
    return number.equals("-0") ? "0" : number;
  }

  /** How well a step was chosen. */
  public static String choice(Debrief.Line line) {
    String better =
        line.worth().better().map(step -> " Better here: " + step.words() + ".").orElse("");
    return switch (line.worth().kind()) {
      case BEST -> "The best choice here.";
      case GOOD -> "A good choice." + better;
      case POOR -> better.strip();
      case NEEDLESS -> "Enough was known already.";
    };
  }

  /** What came of a step, as a sentence. */
  public static String came(Debrief.Line line, PressureUnit unit) {
    String came = line.came().in(unit).strip();
    String sentence = came.substring(0, 1).toUpperCase(Locale.ROOT) + came.substring(1);
    return sentence.endsWith(".") ? sentence : sentence + ".";
  }

  /** What a step told, in two or three words. */
  public static String told(Debrief.Line line) {
    return line.isQuiet()
        ? "little new"
        : line.bits() < 0.5 ? "a little" : line.bits() < 1.5 ? "much" : "very much";
  }

  /** What the curves of a hold are called, in the order of the readings, the truth, the other. */
  public List<String> curveNames() {
    return List.of(
        "You read", "What it was", debrief.isRight() ? "With no fault" : "What you named");
  }

  /** What to see in the curves of a hold. */
  public List<Message> seen(Debrief.Curves curves) {
    List<Message> text = new ArrayList<>();
    int at = curves.farthest();
    double truth = curves.truth()[at];
    double other = curves.other()[at];
    text.add(
        Math.abs(truth - other) < NOTEWORTHY
            ? Message.plain("Both curves look alike here, so this test cannot decide.")
            : Message.of(
                "They differ most at %s: %s with what it was, %s %s.",
                clock(curves.times()[at]),
                Message.pressure(truth),
                Message.pressure(other),
                debrief.isRight() ? "with no fault" : "with what you named"));
    misread(curves).ifPresent(text::add);
    return text;
  }

  /** The reading that lies farthest from where the needle stood, if that is more than a slip. */
  private static Optional<Message> misread(Debrief.Curves curves) {
    ToDoubleFunction<Reading> needle =
        reading -> Interpolation.at(curves.times(), curves.truth(), reading.time());
    return curves.taken().hold().orElseThrow().log().hold().stream()
        .max(
            Comparator.comparingDouble(
                reading -> Math.abs(reading.pressure() - needle.applyAsDouble(reading))))
        .filter(reading -> Math.abs(reading.pressure() - needle.applyAsDouble(reading)) > MISREAD)
        .map(
            reading ->
                Message.of(
                    "You misread the dial: at %s it showed %s, and you noted %s.",
                    clock(reading.time()),
                    Message.pressure(needle.applyAsDouble(reading)),
                    Message.pressure(reading.pressure())));
  }

  private static String clock(double seconds) {
    int whole = (int) Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  /** What would have told most after the last step. */
  public Optional<String> next() {
    return debrief.next().map(step -> "This would have told most next: " + step.words() + ".");
  }

  /** What to remember. */
  public List<String> lesson() {
    return List.of(
        "On the next car: " + debrief.truth().symptoms(),
        Cautions.of(Caution.PETROL, Caution.RELIEVE, Caution.LOCAL_CODES),
        "What puts it right: " + debrief.truth().repair());
  }
}
