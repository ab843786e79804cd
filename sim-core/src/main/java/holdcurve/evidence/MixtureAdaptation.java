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
 * (2008) 447), held back by their old shape while they have few effective draws. A new piece is set
 * on the heaviest draw (incremental mixture importance sampling, Raftery and Bao, Biometrics 66
 * (2010) 1162), which bends the proposal along curved ridges and catches modes that the search
 * missed.
 */
final class MixtureAdaptation {
  private static final int MOST_COMPONENTS = 12;

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
    List<Component> components = new ArrayList<>();
    components.add(mixture.components().get(0));
    List<Double> shares = new ArrayList<>();
    for (int k = 1; k < mixture.weights().length; k++) {
      double[] part = new double[weights.length];
      for (int i = 0; i < part.length; i++) {
        part[i] = weights[i] * responsibilities[i][k];
      }
      components.add(moved(mixture.components().get(k), part));
      shares.add(Arrays.stream(part).sum());
    }
    if (components.size() < MOST_COMPONENTS) {
      addAtHeaviest(components, shares);
    }
    return new Mixture(
        components,
        Mixture.withDefensivePart(shares.stream().mapToDouble(Double::doubleValue).toArray()));
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

  /** A piece on the heaviest draw, shaped by its nearest neighbours; half as heavy as its draw. */
  private void addAtHeaviest(List<Component> components, List<Double> shares) {
    int heaviest =
        IntStream.range(0, weights.length)
            .boxed()
            .max(Comparator.comparingDouble(i -> weights[i]))
            .orElseThrow();
    double[] centre = pool.draws().get(heaviest);
    double[] part = nearest(centre, Math.max(10 * dimension, weights.length / 5));
    double total = Arrays.stream(part).sum();
    double[][] scale = covariance(part, total, centre);
    double[][] parent = closest(centre).scale();
    for (int i = 0; i < dimension; i++) {
      scale[i] = blend(scale[i], parent[i], 0.8);
    }
    components.add(Component.student(centre, scale, Mixture.FREEDOM));
    shares.add(0.1 + weights[heaviest]);
  }

  private Component closest(double[] u) {
    return mixture.components().stream()
        .max(Comparator.comparingDouble(component -> component.logDensity(u)))
        .orElseThrow();
  }

  /** Weights as in the paper, the average of importance and equal weight, of the nearest draws. */
  private double[] nearest(double[] centre, int count) {
    Component metric = closest(centre);
    Component around =
        new Component(centre, metric.scale(), metric.lower(), Double.POSITIVE_INFINITY);
    int[] order =
        IntStream.range(0, weights.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer i) -> -around.logDensity(pool.draws().get(i))))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] part = new double[weights.length];
    for (int j = 0; j < Math.min(count, order.length); j++) {
      part[order[j]] = weights[order[j]] + 1.0 / weights.length;
    }
    return part;
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
