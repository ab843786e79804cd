package holdcurve.physics.ode;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Air pollution in 20 species and 25 reactions (Verwer 1994), read from the published lists of
 * rates ("k8 y9 y6") and balances ("-r7-r8").
 */
final class Pollution extends PublishedProblem {
  private static final Pattern TERM = Pattern.compile("([+-]?)(\\d*)r(\\d+)");

  private final double[] constants = ReferenceSolution.doubles(data().get("k"));
  private final int[][] factors = new int[constants.length][];
  private final double[][] balance = new double[getDimension()][constants.length];

  Pollution() {
    super("pollution");
    for (int r = 0; r < factors.length; r++) {
      String[] words = data().get("rates").get(r).asText().split(" ");
      factors[r] = new int[words.length - 1];
      for (int k = 1; k < words.length; k++) {
        factors[r][k - 1] = Integer.parseInt(words[k].substring(1)) - 1;
      }
    }
    for (int i = 0; i < balance.length; i++) {
      Matcher term = TERM.matcher(data().get("rhs").get(i).asText());
      while (term.find()) {
        double count = term.group(2).isEmpty() ? 1 : Double.parseDouble(term.group(2));
        double sign = term.group(1).equals("-") ? -1 : 1;
        balance[i][Integer.parseInt(term.group(3)) - 1] += sign * count;
      }
    }
  }

  @Override
  double[] floor() {
    return filled(1e-6);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] slope) {
    Arrays.fill(slope, 0);
    for (int r = 0; r < factors.length; r++) {
      double rate = constants[r];
      for (int factor : factors[r]) {
        rate *= y[factor];
      }
      for (int i = 0; i < slope.length; i++) {
        slope[i] += balance[i][r] * rate;
      }
    }
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] dfdy) {
    for (double[] row : dfdy) {
      Arrays.fill(row, 0);
    }
    for (int r = 0; r < factors.length; r++) {
      int[] species = factors[r];
      for (int k = 0; k < species.length; k++) {
        double slope = constants[r] * (species.length == 2 ? y[species[1 - k]] : 1);
        for (int i = 0; i < dfdy.length; i++) {
          dfdy[i][species[k]] += balance[i][r] * slope;
        }
      }
    }
  }
}
