package holdcurve.record.refit;

import java.util.Optional;

/**
 * One step of the refit.
 *
 * @param id short and unique in its list, to name it by
 * @param text what to do, one or two sentences
 * @param caution what to beware of at this step; may be empty
 * @param tick that it was done; empty while it isn't
 */
public record RefitStep(String id, String text, String caution, Optional<RefitTick> tick) {
  /** Whether it was ticked. */
  public boolean isDone() {
    return tick.isPresent();
  }

  /** The same step, ticked. */
  public RefitStep ticked(RefitTick how) {
    return new RefitStep(id, text, caution, Optional.of(how));
  }

  /** The same step, to be done again. */
  public RefitStep open() {
    return new RefitStep(id, text, caution, Optional.empty());
  }
}
