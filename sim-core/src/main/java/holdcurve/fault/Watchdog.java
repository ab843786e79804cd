package holdcurve.fault;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Throws foreign code out that doesn't come back, in whatever thread it runs. Asking the time at
 * each call would cost more than most leak laws; so a thread of its own looks round now and then,
 * and where it finds the same visit again and again, ends it.
 */
final class Watchdog {
  /** Time between two looks [ms]. */
  private static final int LOOK_MS = 200;

  /** Looks, not time: a machine that slept for an hour proves nothing. */
  private static final int LOOKS = 10;

  /** How long a visit may last at most [s]. */
  static final double LIMIT_SECONDS = LOOK_MS * LOOKS / 1000.0;

  private static final Set<GuardedCall> VISITS = ConcurrentHashMap.newKeySet();

  private static final ThreadLocal<GuardedCall> OWN = ThreadLocal.withInitial(Watchdog::enlisted);

  static {
    Thread watch = new Thread(Watchdog::lookRound, "plugin watch");
    watch.setDaemon(true);
    watch.start();
  }

  private Watchdog() {}

  /** What the calling thread enters foreign code with. */
  static GuardedCall visit() {
    return OWN.get();
  }

  private static GuardedCall enlisted() {
    GuardedCall visit = new GuardedCall(Thread.currentThread());
    VISITS.add(visit);
    return visit;
  }

  private static void lookRound() {
    while (true) {
      VISITS.removeIf(GuardedCall::isOver);
      for (GuardedCall visit : VISITS) {
        if (visit.looksUnchanged() >= LOOKS) {
          visit.end();
        }
      }
      try {
        Thread.sleep(LOOK_MS);
      } catch (InterruptedException e) {
        return;
      }
    }
  }
}
