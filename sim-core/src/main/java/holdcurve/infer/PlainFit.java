package holdcurve.infer;

import holdcurve.evidence.Mode;
import holdcurve.evidence.ModeFinder;
import holdcurve.evidence.ResidualLikelihood;
import holdcurve.infer.Latents.Shared;
import java.util.List;

/**
 * The likelihood with its two error scales held: readings scatter widely and independently, the
 * model has hardly any error of its own. What fits best under it lies near the readings as a whole;
 * a search that may widen the model's error from the start can do that instead of fitting.
 */
final class PlainFit implements ResidualLikelihood {
  private static final int[] HELD = {Shared.READING_SCALE.ordinal(), Shared.MODEL_ERROR.ordinal()};
  private static final double[] AT = {3, -4};

  /** A start need not be a mode [nat]. */
  private static final double ROUGHLY = 1;

  private final ResidualLikelihood model;

  private PlainFit(ResidualLikelihood model) {
    this.model = model;
  }

  /** Where the search with all unknowns free begins, from a start for this one [-]. */
  static double[] from(ResidualLikelihood model, double[] start) {
    return ModeFinder.from(new PlainFit(model), start, List.of(), ROUGHLY)
        .map(Mode::u)
        .orElse(start);
  }

  @Override
  public int dimension() {
    return model.dimension();
  }

  @Override
  public int residualCount() {
    return model.residualCount();
  }

  @Override
  public double differenceStep() {
    return model.differenceStep();
  }

  @Override
  public double residuals(double[] u, double[] out) {
    return model.residuals(held(u), out);
  }

  @Override
  public boolean jacobian(double[] u, double[][] out) {
    boolean given = model.jacobian(held(u), out);
    for (double[] row : out) {
      for (int j : HELD) {
        row[j] = 0;
      }
    }
    return given;
  }

  private static double[] held(double[] u) {
    double[] v = u.clone();
    for (int i = 0; i < HELD.length; i++) {
      v[HELD[i]] = AT[i];
    }
    return v;
  }
}
