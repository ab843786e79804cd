package holdcurve.inference.runup;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * How readings of all run-ups scatter about their curves: each by itself, and all by the model's
 * own error, which changes fast after a switch and not at all once things have settled. Most of
 * that error is the same in every test, so that many tests of one car don't count as many proofs.
 * Fixed for a job, so that whitened residuals are rows of a likelihood.
 */
final class RunUpError {
  /** Time after a switch beyond which things settle [s]. */
  private static final double SETTLING = 0.5;

  /** One reading: its test, where it stands on a clock that runs fast after a switch, its own. */
  private record Place(int test, double clock, double deviation) {}

  private final double[][] root;

  RunUpError(List<RunUp> runs, Running priors) {
    List<Place> places = new ArrayList<>();
    runs.forEach(run -> add(run, places));
    int n = places.size();
    double[][] covariance = new double[n][n];
    double variance = priors.modelError() * priors.modelError();
    for (int i = 0; i < n; i++) {
      Place a = places.get(i);
      for (int j = 0; j < n; j++) {
        Place b = places.get(j);
        double apart = Math.abs(a.clock() - b.clock()) / priors.modelErrorLength();
        double shared = a.test() == b.test() ? 1 : priors.modelErrorShared();
        covariance[i][j] = variance * shared * Math.exp(-apart);
      }
      covariance[i][i] += a.deviation() * a.deviation();
    }
    root =
        n == 0
            ? new double[0][0]
            : new CholeskyDecomposition(new Array2DRowRealMatrix(covariance)).getL().getData();
  }

  private static void add(RunUp run, List<Place> places) {
    double before = 0;
    int next = 0;
    for (RunUp.Stage stage : run.stages()) {
      while (next < run.readings().size() && run.readings().get(next).time() < stage.to()) {
        RunUp.Sample reading = run.readings().get(next);
        double at = before + clock(reading.time() - stage.from());
        places.add(new Place(run.test(), at, reading.deviation()));
        next++;
      }
      before += clock(stage.to() - stage.from());
    }
  }

  private static double clock(double time) {
    return Math.log1p(Math.min(time, RunUp.SETTLED) / SETTLING);
  }

  /**
   * @param residuals readings minus curve, in place of which come as many rows of unit variance
   *     [Pa, then -]
   * @param offset where they begin
   */
  void whiten(double[] residuals, int offset) {
    for (int i = 0; i < root.length; i++) {
      double rest = residuals[offset + i];
      for (int j = 0; j < i; j++) {
        rest -= root[i][j] * residuals[offset + j];
      }
      residuals[offset + i] = rest / root[i][i];
    }
  }
}
