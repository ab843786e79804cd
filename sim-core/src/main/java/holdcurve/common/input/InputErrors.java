package holdcurve.common.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong with one file, so that a person can put all of it right at once. */
public final class InputErrors {
  private final List<InputException> found = new ArrayList<>();

  public void add(InputException trouble) {
    found.add(trouble);
  }

  /** Does a piece of work; empty where it can't be done, which is kept. */
  public <T> Optional<T> attempt(Supplier<T> work) {
    try {
      return Optional.of(work.get());
    } catch (InputException e) {
      found.add(e);
      return Optional.empty();
    }
  }

  /**
   * @throws InputException that says all of it, if there is any
   */
  public void refuse() {
    if (!found.isEmpty()) {
      throw InputException.all(found);
    }
  }
}
