package holdcurve.fault;

import java.lang.System.Logger.Level;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.DoubleUnaryOperator;

/**
 * One thread's calls of foreign code, one after another. A call that lasts too long is ended with
 * {@link Thread#stop}, which is given up as unsafe since it may leave anything half done. Here it
 * strikes only while foreign code is running, and goes no further than this class: what is left
 * half done is the plugin's own. Nothing else in Java ends a loop that doesn't ask. From Java 20 on
 * it is gone; there, such a plugin holds its thread up for good.
 */
final class Visit {
  private static final System.Logger LOG = System.getLogger(Visit.class.getName());
  private static final long ENDING = -1;
  private static final long ENDED = -2;
  private static final int PATIENCE = 100_000;

  private final Thread thread;

  /** Odd while foreign code runs, higher by two at each call; negative while it is being ended. */
  private final AtomicLong state = new AtomicLong();

  private volatile boolean wasInterrupted;

  private long seen;
  private int looks;

  Visit(Thread thread) {
    this.thread = thread;
  }

  /**
   * Calls foreign code in the thread that this visit is for.
   *
   * @throws CutOffException if it had to be ended
   */
  double ask(DoubleUnaryOperator foreign, double argument) {
    long inside = state.get() + 1;
    if (inside % 2 == 0) {
      return foreign.applyAsDouble(argument);
    }
    try {
      state.lazySet(inside);
      try {
        double answer = foreign.applyAsDouble(argument);
        if (state.compareAndSet(inside, inside + 1)) {
          return answer;
        }
      } catch (RuntimeException | Error e) {
        if (state.compareAndSet(inside, inside + 1)) {
          throw e;
        }
      }
      awaitStroke();
    } catch (ThreadDeath e) {
      if (state.get() >= 0) {
        throw e;
      }
    }
    forgetStroke();
    state.set(inside + 1);
    throw new CutOffException();
  }

  /** It must not come down later, on code of our own. */
  private void awaitStroke() {
    while (state.get() == ENDING) {
      Thread.onSpinWait();
    }
    for (int i = 0; i < PATIENCE; i++) {
      Thread.yield();
    }
  }

  /** Stopping a thread interrupts it too, which here would cancel work that nobody cancelled. */
  private void forgetStroke() {
    if (!wasInterrupted) {
      Thread.interrupted();
    }
  }

  boolean isOver() {
    return !thread.isAlive();
  }

  /** How many looks before this one found the same call running; asked by the watch alone. */
  int looksUnchanged() {
    long now = state.get();
    looks = now % 2 == 1 && now == seen ? looks + 1 : 0;
    seen = now;
    return looks;
  }

  /** Ends the call that was last looked at, if it is still running. */
  @SuppressWarnings("deprecation")
  void end() {
    if (state.compareAndSet(seen, ENDING)) {
      wasInterrupted = thread.isInterrupted();
      try {
        thread.stop();
      } catch (UnsupportedOperationException e) {
        LOG.log(Level.WARNING, "a fault plugin hangs and can't be ended on this Java", e);
      }
      state.compareAndSet(ENDING, ENDED);
    }
  }
}
