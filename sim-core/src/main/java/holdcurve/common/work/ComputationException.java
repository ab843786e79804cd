package holdcurve.common.work;

/**
 * A computation that came to no result because of what it was given: equations that can't be
 * followed, a foreign law that misbehaves. Whoever tries many circuits catches this and nothing
 * wider, so that a slip in the program is never taken for an impossible circuit.
 */
public class ComputationException extends RuntimeException {
  private static final long serialVersionUID = 1;

  /**
   * @param message in words, no full stop
   */
  public ComputationException(String message) {
    super(message);
  }

  protected ComputationException(String message, Throwable cause) {
    super(message, cause);
  }
}
