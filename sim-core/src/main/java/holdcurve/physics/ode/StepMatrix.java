package holdcurve.physics.ode;

import java.util.Arrays;

/**
 * The matrix I/(hγ) − J of a step: factored without needless zeros where the diagonal serves as
 * pivots, with row-equilibrated partial pivoting where it doesn't.
 */
final class StepMatrix {
  private static final int PATTERNS_KEPT = 8;

  private final int n;
  private final SparseLu sparse;
  private final EquilibratedLu dense;
  private final boolean[] entries;
  private final SparsePattern[] patterns = new SparsePattern[PATTERNS_KEPT];
  private int patternCount;
  private boolean patternKnown;
  private boolean useSparse;

  StepMatrix(int dimension) {
    n = dimension;
    sparse = new SparseLu(n);
    dense = new EquilibratedLu(n);
    entries = new boolean[n * n];
  }

  /** Forgets where the Jacobians so far had entries: a new run starts from its own. */
  void forget() {
    Arrays.fill(entries, false);
    patternKnown = false;
  }

  /** Notes where a new Jacobian has entries. */
  void note(double[][] jacobian) {
    boolean grown = !patternKnown;
    for (int i = 0; i < n; i++) {
      double[] row = jacobian[i];
      for (int j = 0; j < n; j++) {
        if (row[j] != 0 && !entries[i * n + j]) {
          entries[i * n + j] = true;
          grown = true;
        }
      }
    }
    if (grown) {
      sparse.use(pattern());
      patternKnown = true;
    }
  }

  /** The pattern of the entries noted, worked out only if it is not one of the last few. */
  private SparsePattern pattern() {
    for (SparsePattern known : patterns) {
      if (known != null && known.isOf(entries)) {
        return known;
      }
    }
    SparsePattern fresh = new SparsePattern(n, entries);
    patterns[patternCount++ % PATTERNS_KEPT] = fresh;
    return fresh;
  }

  /**
   * @param shift 1/(hγ) [1/s]
   * @param scale positive size of each unknown
   * @return false if no finite pivot other than zero was found
   */
  boolean factor(double shift, double[][] jacobian, double[] scale) {
    useSparse = sparse.factor(shift, jacobian, scale);
    return useSparse || dense.factor(shift, jacobian, scale);
  }

  void solve(double[] b) {
    if (useSparse) {
      sparse.solve(b);
    } else {
      dense.solve(b);
    }
  }

  /** Solves with the matrix last factored for right sides that lie {@link SideBySide}. */
  void solve(double[] b, int stride) {
    if (useSparse) {
      sparse.solve(b, stride);
    } else {
      dense.solve(b, stride);
    }
  }

  /** The column in which the last factorization found no pivot; -1 if it went through. */
  int singularColumn() {
    return useSparse ? -1 : dense.singularColumn();
  }
}
