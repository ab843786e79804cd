package holdcurve.ui.window.holdtests;

import holdcurve.advice.live.Expectation;
import holdcurve.advice.live.LiveAssessment;
import holdcurve.ui.window.frame.Sign;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A judgement in words.
 *
 * @param style class in the stylesheet
 */
record JudgementWords(String style, Sign sign, String word, String sentence) {
  /** Drops of petrol in a millilitre [1/mL]: common practice, no source. */
  private static final double DROPS_PER_ML = 30;

  /** A hold is read for ten minutes: common practice, no source [s]. */
  private static final double LONG_ENOUGH = 600;

  private static final double ML_PER_MIN = 1e-6 / 60;

  /** While nothing was read. */
  static JudgementWords nothingRead() {
    return new JudgementWords(
        "open", Sign.QUESTION, "Too early to say", "Take the first reading when the pump stops.");
  }

  /**
   * While it isn't known what a sound circuit would show.
   *
   * @param underWay whether it is being worked out
   */
  static JudgementWords notJudged(boolean underWay) {
    return new JudgementWords(
        "open",
        Sign.QUESTION,
        "Not judged yet",
        underWay
            ? "What a sound circuit would show is being worked out."
            : "What a sound circuit would show is not known. Take another reading, or rank.");
  }

  /**
   * @param last time of the last reading [s]
   */
  static JudgementWords of(LiveAssessment judgement, Expectation expectation, double last) {
    return switch (judgement.kind()) {
      case SOUND ->
          new JudgementWords(
              "sound",
              Sign.TICK,
              "Sound so far",
              "The needle stands where a sound circuit has it; a leak of more than "
                  + leak(judgement.leastLeak())
                  + " would have shown.");
      case LEAKING ->
          new JudgementWords(
              "leak",
              Sign.DROP,
              "Falls too far",
              "It falls further than a sound circuit lets it, gauge error allowed for. Rank the"
                  + " suspects: they say whether fuel leaks, and where.");
      case FELL_AT_ONCE ->
          new JudgementWords(
              "leak",
              Sign.CROSS,
              "Fell at once",
              "Most of the fall came in the first minute, and it holds since: rather a regulator"
                  + " that shuts low than a leak. Rank the suspects.");
      case HIGH ->
          new JudgementWords(
              "unexplained",
              Sign.CROSS,
              "Too high",
              "It stands higher than a sound circuit would: does the fuel warm up, or the pump"
                  + " still run?");
      case EARLY -> undecided(judgement, expectation, last);
    };
  }

  private static JudgementWords undecided(
      LiveAssessment judgement, Expectation expectation, double last) {
    String sofar =
        Double.isFinite(judgement.leastLeak())
            ? "So far only a leak of more than " + leak(judgement.leastLeak()) + " would show."
            : "The first readings say nothing yet.";
    OptionalDouble tells = tells(expectation);
    if (judgement.leastLeak() <= LiveAssessment.NOTABLE_LEAK) {
      return undecided("Not sure", "The last reading lies off the others. Take one more.");
    }
    if (tells.isPresent() && last < tells.getAsDouble()) {
      double until = 60 * Math.ceil(tells.getAsDouble() / 60);
      return undecided(
          "Too early to say", sofar + " Go on until about " + Entry.clock(until) + ".");
    }
    return last < LONG_ENOUGH
        ? undecided("Too early to say", sofar + " Go on to ten minutes, then rank.")
        : undecided("Can't tell", sofar + " This hold alone can't tell: rank the suspects.");
  }

  private static JudgementWords undecided(String word, String sentence) {
    return new JudgementWords("open", Sign.QUESTION, word, sentence);
  }

  /** When a leak worth looking for shows [s]; empty if it doesn't in the time looked at. */
  private static OptionalDouble tells(Expectation expectation) {
    double[] times = expectation.band().time();
    for (int k = 0; k < times.length; k++) {
      if (expectation.leastLeak()[k] <= LiveAssessment.NOTABLE_LEAK) {
        return OptionalDouble.of(times[k]);
      }
    }
    return OptionalDouble.empty();
  }

  private static String leak(double flow) {
    double perMinute = flow / ML_PER_MIN;
    double drops = perMinute * DROPS_PER_ML;
    String amount = String.format(Locale.ROOT, perMinute < 1 ? "%.2f" : "%.1f", perMinute);
    return amount + " mL/min (" + Math.max(1, Math.round(drops)) + " drops a minute)";
  }
}
