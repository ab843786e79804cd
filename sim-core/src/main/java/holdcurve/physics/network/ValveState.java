package holdcurve.physics.network;

/**
 * What a valve with hysteresis is doing. It changes only between stretches of a run, at a {@link
 * Threshold}.
 */
public enum ValveState {
  /** Open, and passing whatever its pressure asks for. */
  FLOWING,
  /** Shut on its seat. */
  SEATED,
  /** Opening and shutting faster than anything shows it: it passes, on average, what reaches it. */
  CHATTERING
}
