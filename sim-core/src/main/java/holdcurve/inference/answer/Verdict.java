package holdcurve.inference.answer;

import holdcurve.common.message.Message;

/**
 * The answer in one sentence.
 *
 * @param kind what sort of answer it is
 * @param words a sentence or more for a mechanic, with full stops
 */
public record Verdict(Kind kind, Message words) {
  /** One whose sentence has no pressure in it. */
  public Verdict(Kind kind, String sentence) {
    this(kind, Message.plain(sentence));
  }

  /** The words, with pressures in bar. */
  public String sentence() {
    return words.toString();
  }

  /** What the readings allow to say. */
  public enum Kind {
    /** It holds as a sound circuit does. */
    SOUND,
    /** One suspect, or one group that can't be told apart, stands out. */
    LEAK,
    /** Likewise, but it loses no fuel: it shuts too low, starves, or holds back. */
    FAULT,
    /** Something is probably wrong, or perhaps not: the readings don't settle where. */
    OPEN,
    /** None of the listed faults gives such a log. */
    UNEXPLAINED
  }
}
