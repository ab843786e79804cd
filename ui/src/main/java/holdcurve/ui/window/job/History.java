package holdcurve.ui.window.job;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * What was changed, in order, so that it can be taken back and done again. Holds whole states,
 * which share what they have in common.
 *
 * @param <T> immutable state
 */
final class History<T> {
  /** Changes that can be taken back. */
  private static final int MOST = 200;

  /**
   * A change.
   *
   * @param what in words, such as "reading at 1:30"
   * @param page on which it was made; empty for one that all pages show
   */
  private record Step<T>(String what, String page, T before, T after) {}

  private final Deque<Step<T>> done = new ArrayDeque<>();
  private final Deque<Step<T>> undone = new ArrayDeque<>();

  void add(String what, String page, T before, T after) {
    done.push(new Step<>(what, page, before, after));
    undone.clear();
    if (done.size() > MOST) {
      done.removeLast();
    }
  }

  /** The state before the last change; null where nothing is left to take back. */
  T undo() {
    if (done.isEmpty()) {
      return null;
    }
    undone.push(done.pop());
    return undone.peek().before();
  }

  /** The state after the change taken back last; null where there is none. */
  T redo() {
    if (undone.isEmpty()) {
      return null;
    }
    done.push(undone.pop());
    return done.peek().after();
  }

  /** What would be taken back; empty for nothing. */
  String undoName() {
    return done.isEmpty() ? "" : done.peek().what();
  }

  /** Where it was done; empty for nothing, or anywhere. */
  String undoPage() {
    return done.isEmpty() ? "" : done.peek().page();
  }

  /** What would be done again; empty for nothing. */
  String redoName() {
    return undone.isEmpty() ? "" : undone.peek().what();
  }

  /** Where it was done; empty for nothing, or anywhere. */
  String redoPage() {
    return undone.isEmpty() ? "" : undone.peek().page();
  }

  void clear() {
    done.clear();
    undone.clear();
  }
}
