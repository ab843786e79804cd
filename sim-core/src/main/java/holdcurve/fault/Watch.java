package holdcurve.fault;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Throws foreign code out that doesn't come back, in whatever thread it runs. Asking the time at
 * each call would cost more than most leak laws; so a thread of its own looks round now and then,
 * and where it finds the same visit again and again, ends it.
 */
final class Watch {
  /** Time between two looks [ms]. */
  private static final int LOOK_MS = 200;

  /** Looks, not time: a machine that slept for an hour proves nothing. */
  private static final int LOOKS = 10;

  /** How long a visit may last at most [s]. */
  static final double LIMIT_SECONDS = LOOK_MS * LOOKS / 1000.0;

  private static final Set<Visit> VISITS = ConcurrentHashMap.newKeySet();

  private static final ThreadLocal<Visit> OWN = ThreadLocal.withInitial(Watch::enlisted);

  static {
    Thread watch = new Thread(Watch::lookRound, "plugin watch");
    watch.setDaemon(true);
    watch.start();
  }

  private Watch() {}

  /** What the calling thread enters foreign code with. */
  static Visit visit() {
    return OWN.get();
  }

  private static Visit enlisted() {
    Visit visit = new Visit(Thread.currentThread());
    VISITS.add(visit);
    return visit;
  }

  private static void lookRound() {
    while (true) {
      VISITS.removeIf(Visit::isOver);
      for (Visit visit : VISITS) {
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
