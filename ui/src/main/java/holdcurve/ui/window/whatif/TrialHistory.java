package holdcurve.ui.window.whatif;

import java.util.ArrayDeque;
import java.util.Deque;
import javafx.beans.property.Property;

/**
 * What was tried, newest last, to be taken back step by step; the moves of one slider are one step.
 */
final class TrialHistory {
  private record Step(Object of, Runnable back) {}

  private Deque<Step> steps = new ArrayDeque<>();
  private boolean going;

  /** Notes each change of a value. */
  <T> void watch(Property<T> value) {
    value.addListener((property, before, now) -> note(value, () -> value.setValue(before)));
  }

  /**
   * Notes one step.
   *
   * @param of what was changed; noted once while nothing else is
   */
  void note(Object of, Runnable back) {
    if (!going && (steps.isEmpty() || steps.peek().of() != of)) {
      steps.push(new Step(of, back));
    }
  }

  /** Makes one step of all that is changed meanwhile. */
  void together(Runnable changes) {
    Deque<Step> before = steps;
    Deque<Step> all = new ArrayDeque<>();
    steps = all;
    changes.run();
    steps = before;
    if (!all.isEmpty()) {
      note(all, () -> all.forEach(step -> step.back().run()));
    }
  }

  /**
   * Takes the last step back.
   *
   * @return whether there was one
   */
  boolean back() {
    Step last = steps.poll();
    if (last != null) {
      going = true;
      last.back().run();
      going = false;
    }
    return last != null;
  }

  void clear() {
    steps.clear();
  }
}
