package holdcurve.physics.ode;

import com.fasterxml.jackson.databind.JsonNode;

/** Chemical pyrolysis, "E5" of Enright, Hull &amp; Lindberg (1975). */
final class E5 extends PublishedProblem {
  private final double a = parameter("A");
  private final double b = parameter("B");
  private final double c = parameter("C");
  private final double mc = parameter("M") * c;

  E5() {
    super("e5");
  }

  private double parameter(String name) {
    JsonNode parameters = data().get("par");
    return parameters.get(name).asDouble();
  }

  @Override
  double[] floor() {
    return filled(1e-20);
  }

  /** y2 → 1/(M C t) for late times. */
  double late(double t) {
    return 1 / (mc * t);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    double split = a * y[0];
    double bind = b * y[0] * y[2];
    double meet = mc * y[1] * y[2];
    slope[0] = -split - bind;
    slope[1] = split - meet;
    slope[3] = bind - c * y[3];
    slope[2] = slope[1] - slope[3];
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    double bind0 = b * y[2];
    double bind2 = b * y[0];
    double meet1 = mc * y[2];
    double meet2 = mc * y[1];
    fill(dfdy[0], -a - bind0, 0, -bind2, 0);
    fill(dfdy[1], a, -meet1, -meet2, 0);
    fill(dfdy[2], a - bind0, -meet1, -bind2 - meet2, c);
    fill(dfdy[3], bind0, 0, bind2, -c);
  }
}
