package holdcurve.inference.explain;

import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Expected readings of a hypothesis with their 90 % band, from posterior draws. */
public final class CurveBands {
  private static final int DRAWS = 60;
  private static final int POINTS = 50;

  private final Job job;
  private final long seed;

  public CurveBands(Job job, long seed) {
    this.job = job;
    this.seed = seed;
  }

  /** One curve a hold test. */
  public List<HoldCurve> curves(EvaluatedHypothesis evaluated) {
    List<double[]> draws = evaluated.draws(seed, DRAWS);
    List<HoldCurve> curves = new ArrayList<>();
    for (int test = 0; test < job.tests().size(); test++) {
      curves.add(curve(evaluated.model(), draws, test));
    }
    return curves;
  }

  private HoldCurve curve(HypothesisModel model, List<double[]> draws, int test) {
    double[] times = HoldCurve.times(job.tests().get(test).log().holdSpan(), POINTS);
    List<double[]> needles = new ArrayList<>();
    RandomGenerator random = new Well19937c(seed + test);
    for (double[] u : draws) {
      double shift = model.gaugeOffset(u) + model.modelError(u) * random.nextGaussian();
      model
          .curve(u, test, times)
          .map(curve -> Arrays.stream(curve).map(p -> Math.max(0, p + shift)).toArray())
          .ifPresent(needles::add);
    }
    return HoldCurve.of(job.tests().get(test).id(), times, needles);
  }
}
