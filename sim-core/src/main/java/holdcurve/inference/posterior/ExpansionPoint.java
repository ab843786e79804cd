package holdcurve.inference.posterior;

import holdcurve.inference.evidence.Mode;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A fit as seen from the sampled coordinates s: where they are likeliest and how sharply, and where
 * the conditional ones z are expected, z ≈ z₀ + ridge (s − s₀).
 */
final class ExpansionPoint {
  /** Conditional coordinates are expected no farther out than this [-]. */
  private static final double FARTHEST = 4;

  private final int[] sampled;
  private final int[] conditional;
  private final Mode mode;
  private final double[] atMode;
  private final RealMatrix ridge;
  private final Surrogate field;

  ExpansionPoint(JobModel data, HypothesisModel model, Fit fit) {
    Latents latents = model.latentMap().latents();
    sampled = latents.sampled();
    conditional = latents.conditional();
    int[] moving = Arrays.stream(sampled).filter(j -> !latents.changesScale(j)).toArray();
    int[] c = places(latents.curve(), moving);
    int[] z = places(latents.curve(), conditional);
    RealMatrix precision = new Array2DRowRealMatrix(fit.precision(), false);
    RealMatrix zc = precision.getSubMatrix(z, c);
    RealMatrix byMoving = solve(precision.getSubMatrix(z, z), zc).scalarMultiply(-1);
    RealMatrix sharpness =
        even(precision.getSubMatrix(c, c).add(zc.transpose().multiply(byMoving)));
    RealMatrix drift = new Array2DRowRealMatrix(fit.scales().drift(), false).transpose();
    RealMatrix movingDrift = drift.getSubMatrix(c, new int[] {0, 1});
    RealMatrix byScales =
        drift.getSubMatrix(z, new int[] {0, 1}).subtract(byMoving.multiply(movingDrift));
    atMode = Latents.pick(fit.u(), conditional);
    ridge = inOrder(latents, byMoving, byScales);
    mode = mode(fit, latents, sharpness, movingDrift);
    field = new Surrogate(data, model, fit, moving, inverse(sharpness), byMoving);
  }

  /** The sampled part of the posterior about the fit. */
  Mode mode() {
    return mode;
  }

  /** The curves hereabouts. */
  Surrogate field() {
    return field;
  }

  private Mode mode(Fit fit, Latents latents, RealMatrix sharpness, RealMatrix drift) {
    RealMatrix crossed = sharpness.multiply(drift).scalarMultiply(-1);
    RealMatrix scales =
        new Array2DRowRealMatrix(fit.scales().hessian())
            .subtract(drift.transpose().multiply(crossed));
    RealMatrix top = inOrder(latents, sharpness, crossed);
    RealMatrix bottom = inOrder(latents, crossed.transpose(), scales);
    RealMatrix hessian = inOrder(latents, top.transpose(), bottom.transpose());
    RealMatrix lower = new CholeskyDecomposition(even(hessian)).getL();
    return new Mode(Latents.pick(fit.u(), sampled), fit.logEvidence(), lower.getData());
  }

  /** Columns by the moving coordinates and by the scales, put in the order of the sampled ones. */
  private RealMatrix inOrder(Latents latents, RealMatrix byMoving, RealMatrix byScales) {
    RealMatrix all = new Array2DRowRealMatrix(byMoving.getRowDimension(), sampled.length);
    int moving = 0;
    int scales = 0;
    for (int i = 0; i < sampled.length; i++) {
      boolean scale = latents.changesScale(sampled[i]);
      all.setColumnVector(
          i, scale ? byScales.getColumnVector(scales++) : byMoving.getColumnVector(moving++));
    }
    return all;
  }

  /** All coordinates, the conditional ones where they are expected, given the sampled ones. */
  double[] expected(double[] s) {
    double[] u = new double[sampled.length + conditional.length];
    double[] away = new double[s.length];
    for (int i = 0; i < s.length; i++) {
      u[sampled[i]] = s[i];
      away[i] = s[i] - mode.u()[i];
    }
    double[] moved = ridge.operate(away);
    for (int k = 0; k < moved.length; k++) {
      double z = atMode[k] + moved[k];
      u[conditional[k]] = Math.max(-FARTHEST, Math.min(FARTHEST, z));
    }
    return u;
  }

  private static int[] places(int[] all, int[] wanted) {
    return Arrays.stream(wanted)
        .map(j -> IntStream.range(0, all.length).filter(i -> all[i] == j).findFirst().orElseThrow())
        .toArray();
  }

  private static RealMatrix even(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }

  private static RealMatrix solve(RealMatrix positive, RealMatrix right) {
    return new CholeskyDecomposition(positive).getSolver().solve(right);
  }

  private static RealMatrix inverse(RealMatrix positive) {
    return even(new CholeskyDecomposition(positive).getSolver().getInverse());
  }
}
