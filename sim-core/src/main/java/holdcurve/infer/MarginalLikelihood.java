package holdcurve.infer;

import holdcurve.evidence.LogLikelihood;
import holdcurve.evidence.Mode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The likelihood of a hypothesis over its sampled coordinates alone. The others are integrated out:
 * at each point the curves are made linear in them about the place where they are expected, which
 * leaves a Gaussian integral (Laplace's approximation of the conditional, as in Rue, Martino and
 * Chopin, J. R. Statist. Soc. B 71 (2009) 319).
 */
final class MarginalLikelihood implements LogLikelihood {
  /**
   * A joint mode, and how the conditional mode moves with the sampled coordinates: z ≈ centre +
   * slope (s − s₀).
   */
  private record Centre(Mode mode, double[] conditional, RealMatrix slope) {}

  /** Distance from which a second look is taken, in prior standard deviations [-]. */
  private static final double FAR = 0.5;

  /**
   * A mode this far behind the best lends no expectation: its neighbourhood is another's tail
   * [nat].
   */
  private static final double BEHIND = 3;

  private final HypothesisModel model;
  private final int[] sampled;
  private final int[] conditional;
  private final List<Centre> centres = new ArrayList<>();

  /**
   * @param jointModes modes over all coordinates; at least one
   */
  MarginalLikelihood(HypothesisModel model, List<Mode> jointModes) {
    this.model = model;
    Latents latents = model.realisation().latents();
    sampled = latents.sampled();
    conditional = latents.conditional();
    for (Mode mode : jointModes) {
      centres.add(centre(mode));
    }
    centres.replaceAll(this::withMarginal);
    double best =
        centres.stream().mapToDouble(c -> c.mode().laplaceLogEvidence()).max().orElseThrow();
    centres.removeIf(c -> c.mode().laplaceLogEvidence() < best - BEHIND);
  }

  @Override
  public int dimension() {
    return sampled.length;
  }

  /** Modes over the sampled coordinates, for the proposals. */
  List<Mode> modes() {
    return centres.stream()
        .map(Centre::mode)
        .filter(mode -> Double.isFinite(mode.logLikelihood()))
        .toList();
  }

  private Centre centre(Mode joint) {
    RealMatrix hessian = new Array2DRowRealMatrix(joint.hessian(), false);
    RealMatrix ss = hessian.getSubMatrix(sampled, sampled);
    RealMatrix zs = hessian.getSubMatrix(conditional, sampled);
    RealMatrix zz = hessian.getSubMatrix(conditional, conditional);
    RealMatrix slope = new CholeskyDecomposition(zz).getSolver().solve(zs).scalarMultiply(-1);
    RealMatrix marginal = ss.add(zs.transpose().multiply(slope));
    RealMatrix even = marginal.add(marginal.transpose()).scalarMultiply(0.5);
    Mode mode =
        new Mode(
            pick(joint.u(), sampled),
            joint.logLikelihood(),
            even.getData(),
            new CholeskyDecomposition(even).getL().getData(),
            joint.converged());
    return new Centre(mode, pick(joint.u(), conditional), slope);
  }

  private Centre withMarginal(Centre centre) {
    Mode mode = centre.mode();
    double log = logLikelihood(mode.u());
    return new Centre(
        new Mode(mode.u(), log, mode.hessian(), mode.cholesky(), mode.converged()),
        centre.conditional(),
        centre.slope());
  }

  @Override
  public double logLikelihood(double[] s) {
    Point point = at(s);
    return point == null ? Double.NEGATIVE_INFINITY : point.logLikelihood();
  }

  /**
   * A point over all coordinates with its conditional.
   *
   * @param u all coordinates, the conditional ones at their posterior mean
   * @param conditional distribution of the conditional ones
   * @param logLikelihood with those integrated out [nat]
   */
  record Point(double[] u, Conditional conditional, double logLikelihood) {}

  /**
   * The conditional distribution at a point of the sampled coordinates; null where the model fails.
   * The curves are made linear where the conditional ones are expected, again where they turn out
   * to lie if that is far off, and corrected there for what is left of their bend.
   */
  Point at(double[] s) {
    double[] u = expected(s);
    double[][] slopes = new double[model.residualCount() - 1][conditional.length];
    Conditional rest = linearised(u, slopes);
    if (rest != null && moved(u, rest) > FAR) {
      put(u, rest.mean());
      rest = linearised(u, slopes);
    }
    if (rest == null) {
      return null;
    }
    put(u, rest.mean());
    HypothesisModel.Whitened there = model.whitened(u);
    if (there == null) {
      return null;
    }
    Conditional corrected = Conditional.of(slopes, atZero(there.residuals(), slopes, u));
    put(u, corrected.mean());
    return new Point(u, corrected, corrected.logMarginal() - 0.5 * there.logDeterminant());
  }

  /** Fills the slopes of the whitened curves at {@code u}; null where the model fails. */
  private Conditional linearised(double[] u, double[][] slopes) {
    HypothesisModel.Whitened base = model.linearised(u, conditional, slopes);
    if (base == null) {
      return null;
    }
    for (double[] row : slopes) {
      for (int k = 0; k < row.length; k++) {
        row[k] = -row[k];
      }
    }
    return Conditional.of(slopes, atZero(base.residuals(), slopes, u));
  }

  /** What the residuals at {@code u} would be with all conditional coordinates at zero. */
  private double[] atZero(double[] residuals, double[][] slopes, double[] u) {
    double[] atZero = residuals.clone();
    for (int i = 0; i < atZero.length; i++) {
      for (int k = 0; k < conditional.length; k++) {
        atZero[i] += slopes[i][k] * u[conditional[k]];
      }
    }
    return atZero;
  }

  private double moved(double[] u, Conditional rest) {
    double sum = 0;
    for (int k = 0; k < conditional.length; k++) {
      double step = rest.mean()[k] - u[conditional[k]];
      sum += step * step;
    }
    return Math.sqrt(sum);
  }

  /** All coordinates, the conditional ones where they are expected, given the sampled ones. */
  private double[] expected(double[] s) {
    Centre nearest = centres.get(0);
    for (Centre centre : centres) {
      if (distance(centre, s) < distance(nearest, s)) {
        nearest = centre;
      }
    }
    double[] u = new double[sampled.length + conditional.length];
    double[] away = new double[s.length];
    for (int i = 0; i < s.length; i++) {
      u[sampled[i]] = s[i];
      away[i] = s[i] - nearest.mode().u()[i];
    }
    double[] moved = nearest.slope().operate(away);
    for (int k = 0; k < moved.length; k++) {
      double z = nearest.conditional()[k] + moved[k];
      u[conditional[k]] = Math.max(-4, Math.min(4, z));
    }
    return u;
  }

  private static double distance(Centre centre, double[] s) {
    double sum = 0;
    double[][] lower = centre.mode().cholesky();
    for (int j = 0; j < s.length; j++) {
      double along = 0;
      for (int i = j; i < s.length; i++) {
        along += lower[i][j] * (s[i] - centre.mode().u()[i]);
      }
      sum += along * along;
    }
    return sum;
  }

  /**
   * All coordinates of a posterior draw: the sampled ones as given, the rest drawn from their
   * conditional.
   */
  double[] complete(Point point, double[] normal) {
    double[] u = point.u().clone();
    put(u, point.conditional().draw(normal));
    return u;
  }

  int conditionalCount() {
    return conditional.length;
  }

  private void put(double[] u, double[] z) {
    for (int k = 0; k < conditional.length; k++) {
      u[conditional[k]] = z[k];
    }
  }

  private static double[] pick(double[] u, int[] which) {
    double[] picked = new double[which.length];
    for (int i = 0; i < which.length; i++) {
      picked[i] = u[which[i]];
    }
    return picked;
  }
}
