package holdcurve.inference.likelihood;

import holdcurve.inference.evidence.LogLikelihood;
import holdcurve.inference.noise.Scales;
import java.util.Set;
import java.util.stream.IntStream;

/** A likelihood with nothing integrated out, over the coordinates that anything depends on. */
public final class WholeLikelihood implements LogLikelihood {
  private static final Set<Latents.Shared> OF_THE_GAUGE =
      Set.of(Latents.Shared.GAUGE_OFFSET, Latents.Shared.READING_SCALE, Latents.Shared.MODEL_ERROR);

  private final JobModel data;
  private final HypothesisModel model;
  private final int[] used;

  public WholeLikelihood(JobModel data, HypothesisModel model) {
    this.data = data;
    this.model = model;
    Latents latents = model.latentMap().latents();
    used =
        IntStream.range(0, model.dimension())
            .filter(j -> isUsed(latents, j, data.job().tests().size()))
            .toArray();
  }

  private static boolean isUsed(Latents latents, int j, int tests) {
    return j >= latents.firstOfSides()
        || OF_THE_GAUGE.stream().anyMatch(shared -> shared.ordinal() == j)
        || IntStream.range(0, tests).anyMatch(test -> latents.changesCurve(j, test));
  }

  @Override
  public int dimension() {
    return used.length;
  }

  @Override
  public double logLikelihood(double[] u) {
    double[] all = new double[model.dimension()];
    Latents.put(all, used, u);
    return at(all);
  }

  /** Likewise, over all coordinates. */
  double at(double[] u) {
    return model
        .residuals(u)
        .map(residuals -> density(u, residuals))
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private double density(double[] u, double[] residuals) {
    Scales scales = model.scales(u);
    double log = data.logDensityAtZero(scales);
    for (double row : data.whitened(residuals, scales)) {
      log -= 0.5 * row * row;
    }
    return log;
  }
}
