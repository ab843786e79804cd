package holdcurve.fault;

import java.lang.System.Logger.Level;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;

/**
 * One thread's calls of foreign code, one after another. A call that lasts too long is ended with
 * {@link Thread#stop}, which is given up as unsafe since it may leave anything half done. Here it
 * strikes only while foreign code is running, and goes no further than this class: what is left
 * half done is the plugin's own. Nothing else in Java ends a loop that doesn't ask. From Java 20 on
 * it is gone; there, a call that sleeps or waits is interrupted, and one that is busy holds its
 * thread up for good.
 */
final class GuardedCall {
  private static final System.Logger LOG = System.getLogger(GuardedCall.class.getName());
  private static final long ENDING = -1;
  private static final long ENDED = -2;
  private static final long INTERRUPTED = -4;

  /** Turns given to others: on a busy machine each takes milliseconds. */
  private static final int PATIENCE = 100;

  private final Thread thread;
  private final Consumer<Thread> stroke;

  /** Odd while foreign code runs, higher by two at each call; negative while it is being ended. */
  private final AtomicLong state = new AtomicLong();

  private volatile boolean wasInterrupted;

  private long seen;
  private int looks;

  GuardedCall(Thread thread) {
    this(thread, GuardedCall::stop);
  }

  /**
   * @param stroke ends what the thread does; may not be supported
   */
  GuardedCall(Thread thread, Consumer<Thread> stroke) {
    this.thread = thread;
    this.stroke = stroke;
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
        if (state.compareAndSet(inside, inside + 1) || e instanceof ThreadDeath) {
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
    for (int i = 0; i < PATIENCE && state.get() == ENDED; i++) {
      Thread.yield();
    }
  }

  /** Stopping a thread interrupts it too, which here would cancel work that nobody cancelled. */
  private void forgetStroke() {
    if (!wasInterrupted) {
      Thread.interrupted();
    }
  }

  /** Linked only when it is called, so that a Java without the method can load this class. */
  @SuppressWarnings("deprecation")
  private static void stop(Thread thread) {
    thread.stop();
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
  void end() {
    if (state.compareAndSet(seen, ENDING)) {
      wasInterrupted = thread.isInterrupted();
      long done = ENDED;
      try {
        stroke.accept(thread);
      } catch (UnsupportedOperationException | NoSuchMethodError e) {
        LOG.log(Level.WARNING, "a fault plugin hangs; this Java can only interrupt it");
        thread.interrupt();
        done = INTERRUPTED;
      }
      state.compareAndSet(ENDING, done);
    }
  }
}
