package holdcurve.inference.prior;

import java.util.EnumMap;
import java.util.Map;

/**
 * What an earlier job of the same car taught of unknowns that stay with a car: a Gaussian each, in
 * standard deviations of what is usual.
 *
 * @param normals what isn't there is as usual
 */
public record LearnedUnknowns(Map<Unknown, Normal> normals) {
  /** Nothing learned. */
  public static final LearnedUnknowns NONE = new LearnedUnknowns(Map.of());

  private static final Normal USUAL = new Normal(0, 1);

  /** What stays with a car until a part is renewed. */
  public enum Unknown {
    COMPLIANCE,
    CREEP,
    CREEP_TIME,
    QUICK_CREEP,
    SET_PRESSURE
  }

  /**
   * A Gaussian.
   *
   * @param middle in standard deviations of what is usual [-]
   * @param deviation likewise [-]
   */
  public record Normal(double middle, double deviation) {}

  public LearnedUnknowns {
    normals = Map.copyOf(normals);
  }

  /** Of one unknown; as usual where nothing was learned. */
  public Normal of(Unknown unknown) {
    return normals.getOrDefault(unknown, USUAL);
  }

  /**
   * For a later job: each may have drifted since, and is never narrower than it was learned nor
   * wider than usual.
   *
   * @param drift standard deviation, of what is usual [-]
   */
  public LearnedUnknowns later(double drift) {
    Map<Unknown, Normal> later = new EnumMap<>(Unknown.class);
    normals.forEach(
        (unknown, normal) ->
            later.put(
                unknown,
                new Normal(normal.middle(), Math.min(1, Math.hypot(normal.deviation(), drift)))));
    return new LearnedUnknowns(later);
  }

  /** Without those of parts that were renewed. */
  public LearnedUnknowns without(Iterable<Unknown> renewed) {
    Map<Unknown, Normal> kept = new EnumMap<>(Unknown.class);
    kept.putAll(normals);
    renewed.forEach(kept::remove);
    return new LearnedUnknowns(kept);
  }
}
