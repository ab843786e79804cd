package holdcurve.physics.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/**
 * Tells when a valve chatters: when it has changed so often within so short a time that no gauge
 * shows it, and following every change would cost minutes and tell nothing.
 */
final class ChatterWatch {
  /** Changes in a row that are followed one by one. */
  static final int FOLLOWED = 20;

  /** Ten times open and shut within this is faster than a needle swings: assumed [s]. */
  static final double SHORT = 2;

  private final Map<String, Deque<Double>> changes = new HashMap<>();

  /** Notes a change at a time [s] and says whether the last {@link #FOLLOWED} were too fast. */
  boolean chatters(String valve, double time) {
    Deque<Double> last = changes.computeIfAbsent(valve, id -> new ArrayDeque<>());
    last.addLast(time);
    if (last.size() <= FOLLOWED) {
      return false;
    }
    return time - last.removeFirst() < SHORT;
  }
}
