package holdcurve.common.input;

/**
 * The input can be used, but no answer can be drawn from it. The message is one sentence or two for
 * the person who asked: what stands in the way, where, and what would help. Callers print it and
 * end with exit code 3.
 */
public final class NoAnswerException extends RuntimeException {
  /**
   * @param sentence with its full stop
   */
  public NoAnswerException(String sentence) {
    super(sentence);
  }

  /** Like the other, keeping the cause for the log. */
  public NoAnswerException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
