package holdcurve.infer;

import holdcurve.evidence.LogLikelihood;
import holdcurve.evidence.Mode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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
  private record Centre(Mode mode, double[] conditional, RealMatrix slope, SlopeField field) {}

  /** Looks at the curve, each where the last has the conditional coordinates. */
  private static final int LOOKS = 2;

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
    double best = jointModes.stream().mapToDouble(Mode::laplaceLogEvidence).max().orElseThrow();
    jointModes.stream()
        .filter(mode -> mode.laplaceLogEvidence() >= best - BEHIND)
        .forEach(mode -> centres.add(centre(mode)));
    centres.replaceAll(this::withMarginal);
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
    return new Centre(mode, pick(joint.u(), conditional), slope, field(joint, even, slope));
  }

  private SlopeField field(Mode joint, RealMatrix marginal, RealMatrix slope) {
    RealMatrix inverse = new CholeskyDecomposition(marginal).getSolver().getInverse();
    RealMatrix covariance = inverse.add(inverse.transpose()).scalarMultiply(0.5);
    int[] places = IntStream.range(0, sampled.length).filter(i -> !changesScale(i)).toArray();
    int[] moving = Arrays.stream(places).map(i -> sampled[i]).toArray();
    RealMatrix ridge = slope.getSubMatrix(IntStream.range(0, conditional.length).toArray(), places);
    return new SlopeField(
        model, joint.u(), moving, covariance.getSubMatrix(places, places), conditional, ridge);
  }

  private boolean changesScale(int i) {
    return model.realisation().latents().changesScale(sampled[i]);
  }

  private Centre withMarginal(Centre centre) {
    Mode mode = centre.mode();
    double log = logLikelihood(mode.u());
    return new Centre(
        new Mode(mode.u(), log, mode.hessian(), mode.cholesky(), mode.converged()),
        centre.conditional(),
        centre.slope(),
        centre.field());
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
   * The curves are looked at where the conditional ones are expected, and again where they turn out
   * to lie, to correct for their bend.
   */
  Point at(double[] s) {
    Centre centre = nearest(s);
    double[] u = expected(centre, s);
    double[][] slopes = centre.field().at(u);
    model.whitenSlopes(u, slopes);
    for (double[] row : slopes) {
      for (int k = 0; k < row.length; k++) {
        row[k] = -row[k];
      }
    }
    Point point = null;
    for (int look = 0; look < LOOKS; look++) {
      HypothesisModel.Whitened there = model.whitened(u);
      if (there == null) {
        return null;
      }
      Conditional rest = Conditional.of(slopes, atZero(there.residuals(), slopes, u));
      put(u, rest.mean());
      point = new Point(u, rest, rest.logMarginal() - 0.5 * there.logDeterminant());
    }
    return point;
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

  private Centre nearest(double[] s) {
    Centre nearest = centres.get(0);
    for (Centre centre : centres) {
      if (distance(centre, s) < distance(nearest, s)) {
        nearest = centre;
      }
    }
    return nearest;
  }

  /** All coordinates, the conditional ones where they are expected, given the sampled ones. */
  private double[] expected(Centre nearest, double[] s) {
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
