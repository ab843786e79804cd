package holdcurve.ui.window.holdtests;

import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** Time since the pump stopped, and the moment that a reading being typed belongs to. */
final class Stopwatch {
  private final DoubleSupplier clock;
  private final BooleanProperty running = new SimpleBooleanProperty();
  private double start;
  private OptionalDouble held = OptionalDouble.empty();

  /**
   * @param clock any steady clock [s]
   */
  Stopwatch(DoubleSupplier clock) {
    this.clock = clock;
  }

  /** The pump stops now. */
  void start() {
    start = clock.getAsDouble();
    held = OptionalDouble.empty();
    running.set(true);
  }

  void stop() {
    held = OptionalDouble.empty();
    running.set(false);
  }

  ReadOnlyBooleanProperty runningProperty() {
    return running;
  }

  /** Time since the pump stopped [s], to a tenth. */
  double time() {
    return Math.rint(10 * (clock.getAsDouble() - start)) / 10;
  }

  /** Keeps this moment for the reading that is typed next, unless one is kept already. */
  void hold() {
    if (running.get() && held.isEmpty()) {
      held = OptionalDouble.of(time());
    }
  }

  /** The moment kept [s]. */
  OptionalDouble held() {
    return held;
  }

  /** Lets go of the moment kept. */
  void release() {
    held = OptionalDouble.empty();
  }
}
