package holdcurve.ui.window.holdtests;

import holdcurve.live.Expectation;
import holdcurve.live.Judgement;
import holdcurve.ui.window.frame.Sign;
import java.util.Locale;

/**
 * A judgement in words.
 *
 * @param style class in the stylesheet
 */
record JudgementWords(String style, Sign sign, String word, String sentence) {
  /** Drops of petrol in a millilitre [1/mL]: common practice, no source. */
  private static final double DROPS_PER_ML = 30;

  private static final double ML_PER_MIN = 1e-6 / 60;

  static JudgementWords of(Judgement judgement, Expectation expectationOrNull) {
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
      case EARLY ->
          new JudgementWords(
              "open", Sign.QUESTION, "Too early to say", early(judgement, expectationOrNull));
    };
  }

  private static String early(Judgement judgement, Expectation expectation) {
    if (expectation == null) {
      return "Take the first reading when the pump stops.";
    }
    String next = whenItTells(expectation);
    return Double.isFinite(judgement.leastLeak())
        ? "So far only a leak of more than " + leak(judgement.leastLeak()) + " would show." + next
        : "The first readings say nothing yet." + next;
  }

  private static String whenItTells(Expectation expectation) {
    double[] times = expectation.band().time();
    for (int k = 0; k < times.length; k++) {
      if (expectation.leastLeak()[k] <= Judgement.NOTABLE_LEAK) {
        return " Go on until about " + Entry.clock(60 * Math.ceil(times[k] / 60)) + ".";
      }
    }
    return " This hold alone may not tell: go on to ten minutes, then rank.";
  }

  private static String leak(double flow) {
    double perMinute = flow / ML_PER_MIN;
    double drops = perMinute * DROPS_PER_ML;
    String amount = String.format(Locale.ROOT, perMinute < 1 ? "%.2f" : "%.1f", perMinute);
    return amount + " mL/min (" + Math.max(1, Math.round(drops)) + " drops a minute)";
  }
}
