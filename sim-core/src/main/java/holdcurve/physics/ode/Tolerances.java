package holdcurve.physics.ode;

import java.util.Arrays;

/**
 * How large an error each component may have in one step: absolute + relative · |y|.
 *
 * <p>Immutable. Every absolute tolerance is positive, so that a component at zero has a scale too.
 */
public final class Tolerances {
  private final double[] absolute;
  private final double[] relative;

  private Tolerances(double[] absolute, double[] relative) {
    this.absolute = absolute;
    this.relative = relative;
    for (int i = 0; i < absolute.length; i++) {
      check("absolute", i, absolute[i], absolute[i] > 0);
      check("relative", i, relative[i], relative[i] >= 0);
    }
  }

  private static void check(String kind, int component, double value, boolean signRight) {
    if (!signRight || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "the %s tolerance of component %d is %s; it must be finite and %s"
              .formatted(kind, component, value, kind.equals("absolute") ? "> 0" : ">= 0"));
    }
  }

  /**
   * The same tolerance for each component.
   *
   * @param dimension number of components
   * @param absolute [unit of the state], positive
   * @param relative [-], not negative
   */
  public static Tolerances uniform(int dimension, double absolute, double relative) {
    return new Tolerances(filled(dimension, absolute), filled(dimension, relative));
  }

  /**
   * @param absolute one positive entry a component [unit of the component]
   * @param relative one entry a component [-], not negative
   */
  public static Tolerances of(double[] absolute, double[] relative) {
    if (absolute.length != relative.length) {
      throw new IllegalArgumentException(
          "%d absolute tolerances but %d relative ones"
              .formatted(absolute.length, relative.length));
    }
    return new Tolerances(absolute.clone(), relative.clone());
  }

  /**
   * One relative tolerance, with an absolute one in proportion to a natural size of each component:
   * absolute_i = relative · floor_i.
   *
   * @param relative [-], positive
   * @param floor size below which a component counts as small [unit of the component]
   */
  public static Tolerances relative(double relative, double... floor) {
    double[] absolute = Arrays.stream(floor).map(size -> relative * size).toArray();
    return new Tolerances(absolute, filled(floor.length, relative));
  }

  private static double[] filled(int length, double value) {
    double[] filled = new double[length];
    Arrays.fill(filled, value);
    return filled;
  }

  public int dimension() {
    return absolute.length;
  }

  /** Error allowed in component i when its size is |y| = size [unit of the component]. */
  double scale(int i, double size) {
    return absolute[i] + relative[i] * size;
  }
}
