package holdcurve.check;

/**
 * Something a person gave us can't be used. The message is one sentence for that person: which
 * file, where in it, what stands there, and what would be right. Callers print the message and end
 * with exit code 2; they never show a stack trace for it.
 */
public final class InputException extends RuntimeException {
  private final String source;

  private InputException(String source, String message, Throwable cause) {
    super(message, cause);
    this.source = source;
  }

  /**
   * @param source the file (or "command line"), as the user named it
   * @param place line, column or path inside the source; empty when the whole source is meant
   * @param problem what is wrong, with the value found, no full stop
   * @param remedy what would be right, no full stop
   */
  public static InputException at(String source, String place, String problem, String remedy) {
    return because(source, place, problem, remedy, null);
  }

  /** Like {@link #at}, keeping the cause for the log. */
  public static InputException because(
      String source, String place, String problem, String remedy, Throwable cause) {
    String where = place.isEmpty() ? source : source + ", " + place;
    return new InputException(source, where + ": " + problem + "; " + remedy + ".", cause);
  }

  /** The file (or other source) that the message is about. */
  public String source() {
    return source;
  }
}
