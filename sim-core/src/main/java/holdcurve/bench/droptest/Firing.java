package holdcurve.bench.droptest;

import holdcurve.common.input.Require;
import java.util.OptionalDouble;

/**
 * One firing of one injector.
 *
 * @param injector which
 * @param before gauge reading just before [Pa gauge]
 * @param after gauge reading when the needle has settled again [Pa gauge]
 * @param later a third reading, to see whether the needle goes on falling [Pa gauge]
 */
public record Firing(String injector, double before, double after, OptionalDouble later) {
  public Firing {
    Require.positive(before, "reading before the firing", "Pa");
    Require.notNegative(after, "reading after the firing", "Pa");
    later.ifPresent(p -> Require.notNegative(p, "third reading", "Pa"));
  }

  /** Without a third reading. */
  public Firing(String injector, double before, double after) {
    this(injector, before, after, OptionalDouble.empty());
  }
}
