package holdcurve.buildup;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * How readings of a run-up scatter about their curve: each by itself, and all by the model's own
 * error, which changes fast after a switch and slowly later. Fixed for a log, so that whitened
 * departures are rows of a likelihood.
 */
final class RunUpError {
  /** Time after a switch beyond which things settle [s]. */
  private static final double SETTLING = 0.5;

  private final double[][] root;

  RunUpError(RunUp run, Running priors) {
    double[] place = places(run);
    int n = place.length;
    double[][] covariance = new double[n][n];
    double variance = priors.modelError() * priors.modelError();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double apart = Math.abs(place[i] - place[j]) / priors.modelErrorLength();
        covariance[i][j] = variance * Math.exp(-apart);
      }
      double own = run.readings().get(i).deviation();
      covariance[i][i] += own * own;
    }
    root = new CholeskyDecomposition(new Array2DRowRealMatrix(covariance)).getL().getData();
  }

  /** Each reading on a clock that runs fast after a switch [-]. */
  private static double[] places(RunUp run) {
    double[] places = new double[run.readings().size()];
    double before = 0;
    int next = 0;
    for (RunUp.Stage stage : run.stages()) {
      while (next < places.length && run.readings().get(next).time() < stage.to()) {
        places[next] = before + clock(run.readings().get(next).time() - stage.from());
        next++;
      }
      before += clock(stage.to() - stage.from());
    }
    return places;
  }

  private static double clock(double time) {
    return Math.log1p(time / SETTLING);
  }

  /**
   * @param departures readings minus curve [Pa]
   * @param out receives as many rows of unit variance from {@code offset} on [-]
   */
  void whiten(double[] departures, double[] out, int offset) {
    for (int i = 0; i < departures.length; i++) {
      double rest = departures[i];
      for (int j = 0; j < i; j++) {
        rest -= root[i][j] * out[offset + j];
      }
      out[offset + i] = rest / root[i][i];
    }
  }
}
