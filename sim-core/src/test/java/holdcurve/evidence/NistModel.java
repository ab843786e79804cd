package holdcurve.evidence;

import java.util.Arrays;

/**
 * One data set of the NIST Statistical Reference Datasets for nonlinear regression, as residuals.
 */
final class NistModel implements LeastSquares.Residuals {
  private final String name;
  private final double[] x;
  private final double[] y;

  NistModel(String name) {
    String[][] rows =
        Arrays.stream(Reference.table("nist_strd_data.csv"))
            .filter(row -> row[0].equals(name))
            .toArray(String[][]::new);
    this.name = name;
    this.x = Arrays.stream(rows).mapToDouble(row -> Double.parseDouble(row[1])).toArray();
    this.y = Arrays.stream(rows).mapToDouble(row -> Double.parseDouble(row[2])).toArray();
  }

  @Override
  public double[] at(double[] b) {
    double[] out = new double[x.length];
    Arrays.setAll(out, i -> y[i] - value(b, x[i]));
    return out;
  }

  private double value(double[] b, double t) {
    return switch (name) {
      case "Misra1a", "BoxBOD" -> b[0] * (1 - Math.exp(-b[1] * t));
      case "MGH09" -> b[0] * (t * t + b[1] * t) / (t * t + b[2] * t + b[3]);
      case "MGH17" -> b[0] + b[1] * Math.exp(-b[3] * t) + b[2] * Math.exp(-b[4] * t);
      case "Lanczos3" ->
          b[0] * Math.exp(-b[1] * t) + b[2] * Math.exp(-b[3] * t) + b[4] * Math.exp(-b[5] * t);
      case "Hahn1", "Thurber" ->
          (b[0] + t * (b[1] + t * (b[2] + t * b[3]))) / (1 + t * (b[4] + t * (b[5] + t * b[6])));
      default -> throw new IllegalArgumentException("no such data set: " + name);
    };
  }
}
