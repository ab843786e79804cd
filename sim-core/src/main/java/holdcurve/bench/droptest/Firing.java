package holdcurve.bench.droptest;

import holdcurve.common.input.Require;

/**
 * One firing of one injector.
 *
 * @param injector which
 * @param before gauge reading just before [Pa gauge]
 * @param after gauge reading when the needle has settled again [Pa gauge]
 */
public record Firing(String injector, double before, double after) {
  public Firing {
    Require.positive(before, "reading before the firing", "Pa");
    Require.notNegative(after, "reading after the firing", "Pa");
  }
}
