package holdcurve.infer;

/**
 * The answer in one sentence.
 *
 * @param kind what sort of answer it is
 * @param sentence for a mechanic, with its full stop
 */
public record Verdict(Kind kind, String sentence) {
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
