package holdcurve.fault;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** How a plugin behaved since it was loaded. */
final class PluginRecord {
  private final AtomicReference<FaultFailure> first = new AtomicReference<>();
  private volatile FaultFailure hung;

  /**
   * @return what was given, to be thrown
   */
  FaultFailure note(FaultFailure failure) {
    first.compareAndSet(null, failure);
    return failure;
  }

  /** Like {@link #note}, for one that isn't to be asked again. */
  FaultFailure noteHung(FaultFailure failure) {
    hung = failure;
    return note(failure);
  }

  /**
   * @throws FaultFailure if it left something hanging before
   */
  void requireNotHung() {
    if (hung != null) {
      throw hung;
    }
  }

  /** The first failure. */
  Optional<FaultFailure> failure() {
    return Optional.ofNullable(first.get());
  }
}
