package holdcurve.common.input;

import java.util.concurrent.CancellationException;

/**
 * How long work is stopped: whoever wants it stopped interrupts its thread, and the work asks here
 * often enough to end within a fifth of a second.
 */
public final class Cancellation {
  private Cancellation() {}

  /**
   * @throws CancellationException if the thread was interrupted; it stays so
   */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("cancelled");
    }
  }
}
