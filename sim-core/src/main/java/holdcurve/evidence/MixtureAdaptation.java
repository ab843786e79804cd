package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Refits a proposal to the weighted draws.
 *
 * <p>Student pieces move to the weighted mean and covariance of the draws they answer for (mixture
 * population Monte Carlo, Cappé, Douc, Guillin, Marin and Robert, Statistics and Computing 18
 * (2008) 447), held back by their old shape while they have few effective draws. New pieces are set
 * on the heaviest draws (incremental mixture importance sampling, Raftery and Bao, Biometrics 66
 * (2010) 1162), which bends the proposal along curved ridges and catches modes that the search
 * missed.
 */
final class MixtureAdaptation {
  private static final int MOST_COMPONENTS = 12;
  private static final int NEW_PIECES = 3;

  private final DrawPool pool;
  private final Mixture mixture;
  private final double[] weights;
  private final int dimension;

  private MixtureAdaptation(DrawPool pool, Mixture mixture) {
    this.pool = pool;
    this.mixture = mixture;
    this.weights = pool.weights();
    this.dimension = mixture.components().get(0).dimension();
  }

  static Mixture refit(DrawPool pool, Mixture mixture) {
    return new MixtureAdaptation(pool, mixture).refit();
  }

  private Mixture refit() {
    double[][] responsibilities = pool.responsibilities(mixture);
    List<Component> following = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int k = mixture.defensive(); k < mixture.weights().length; k++) {
      double[] part = new double[weights.length];
      for (int i = 0; i < part.length; i++) {
        part[i] = weights[i] * responsibilities[i][k];
      }
      following.add(moved(mixture.components().get(k), part));
      shares.add(Arrays.stream(part).sum());
    }
    if (following.size() < MOST_COMPONENTS) {
      addAtHeaviest(following, shares);
    }
    return Mixture.of(
        dimension,
        List.of(overall()),
        following,
        shares.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** A piece over everything found so far, two to three times as wide in variance. */
  private Component overall() {
    double[] mean = weightedMean(weights, 1);
    double[][] scale = covariance(weights, 1, mean);
    double[][] parent = closest(mean).scale();
    for (int i = 0; i < dimension; i++) {
      for (int j = 0; j < dimension; j++) {
        scale[i][j] = 2.5 * scale[i][j] + 0.5 * parent[i][j];
      }
    }
    return Component.student(mean, scale, Mixture.FREEDOM);
  }

  private Component moved(Component old, double[] part) {
    double total = Arrays.stream(part).sum();
    double effective = total * total / Math.max(LogSum.squaredNorm(part), Double.MIN_NORMAL);
    double trust = total > 0 ? effective / (effective + 2.0 * dimension) : 0;
    if (trust == 0) {
      return old;
    }
    double[] mean = blend(weightedMean(part, total), old.location(), trust);
    double[][] scale = covariance(part, total, mean);
    for (int i = 0; i < dimension; i++) {
      scale[i] = blend(scale[i], old.scale()[i], trust);
    }
    return Component.student(mean, scale, Mixture.FREEDOM);
  }

  /** Pieces on the heaviest draws, each shaped by the slopes there if there are any. */
  private void addAtHeaviest(List<Component> following, List<Double> shares) {
    int[] order =
        IntStream.range(0, weights.length)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -weights[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int added = 0; added < NEW_PIECES; added++) {
      int i = order[added];
      double[] u = pool.draws().get(i);
      following.add(
          pool.hasSlopes() ? Mixture.aroundPoint(u, pool.hessianAt(u)) : copyOfClosest(u));
      shares.add(0.1 + weights[i]);
    }
  }

  /** Where the model has no slopes, the piece that answers for the place lends its shape. */
  private Component copyOfClosest(double[] u) {
    return Component.student(u, closest(u).scale(), Mixture.FREEDOM);
  }

  private Component closest(double[] u) {
    return mixture.components().stream()
        .max(Comparator.comparingDouble(component -> component.logDensity(u)))
        .orElseThrow();
  }

  private double[] weightedMean(double[] part, double total) {
    double[] mean = new double[dimension];
    for (int i = 0; i < part.length; i++) {
      for (int j = 0; j < dimension; j++) {
        mean[j] += part[i] / total * pool.draws().get(i)[j];
      }
    }
    return mean;
  }

  private double[][] covariance(double[] part, double total, double[] centre) {
    double[][] out = new double[dimension][dimension];
    for (int i = 0; i < part.length; i++) {
      double[] u = pool.draws().get(i);
      for (int j = 0; j < dimension; j++) {
        for (int k = 0; k < dimension; k++) {
          out[j][k] += part[i] / total * (u[j] - centre[j]) * (u[k] - centre[k]);
        }
      }
    }
    return out;
  }

  private static double[] blend(double[] fresh, double[] old, double trust) {
    double[] out = new double[fresh.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = trust * fresh[i] + (1 - trust) * old[i];
    }
    return out;
  }
}
