package holdcurve.casebook;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Which fault rates rankings start from.
 *
 * @param file with the rates of another garage; empty for any other kind
 */
public record RatesInUse(Kind kind, Optional<Path> file) {
  /** The shipped ones. */
  public static final RatesInUse SHIPPED = new RatesInUse(Kind.SHIPPED, Optional.empty());

  /** Those learned from the case book. */
  public static final RatesInUse OWN = new RatesInUse(Kind.OWN, Optional.empty());

  /** Where the rates come from. */
  public enum Kind {
    SHIPPED,
    OWN,
    FILE
  }
}
