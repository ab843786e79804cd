package holdcurve.physics.ode;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the LU factors of a matrix have entries when its diagonal entries are the pivots, taken in
 * an order that keeps the fill small (Markowitz: at each stage the pivot with the fewest entries
 * left in its row times its column). A function of the matrix's own pattern alone, so that results
 * don't hang on what was solved before.
 */
final class SparsePattern {
  private record Entry(int row, int column) {}

  private final int n;
  private final boolean[] original;
  private final boolean[] filled;
  private final boolean[] done;

  /** Unknowns in the order of elimination. */
  final int[] order;

  /** For each unknown, how many entries of L stand below its pivot. */
  final int[] belowCount;

  /** For each unknown, how many entries of U stand right of its pivot. */
  final int[] rightCount;

  /** Row and column of each entry of L, pivot after pivot in the order of elimination. */
  final int[] lowerRow;

  final int[] lowerColumn;

  /** Where each entry of L stands when they are taken row after row in the order of elimination. */
  final int[] lowerPlace;

  /** Column of each entry of L, row after row in the order of elimination. */
  final int[] lowerColumnByRow;

  /** Number of entries of L in each row. */
  final int[] leftCount;

  /** Row and column of each entry of U, pivot after pivot in the order reversed. */
  final int[] upperRow;

  final int[] upperColumn;

  /** Places i·n + j that the factorization reads or writes, the diagonal among them. */
  final int[] places;

  /**
   * @param entries row-major, n·n: where the matrix may differ from zero; the diagonal counts as
   *     filled
   */
  SparsePattern(int n, boolean[] entries) {
    this.n = n;
    original = entries.clone();
    filled = entries.clone();
    done = new boolean[n];
    order = new int[n];
    belowCount = new int[n];
    rightCount = new int[n];
    for (int place = 0; place < n; place++) {
      int k = cheapest();
      order[place] = k;
      done[k] = true;
      fill(k);
    }
    List<Entry> lower = new ArrayList<>();
    List<Entry> upper = new ArrayList<>();
    collect(lower, upper);
    Collections.reverse(upper);
    lowerRow = lower.stream().mapToInt(Entry::row).toArray();
    lowerColumn = lower.stream().mapToInt(Entry::column).toArray();
    upperRow = upper.stream().mapToInt(Entry::row).toArray();
    upperColumn = upper.stream().mapToInt(Entry::column).toArray();
    lowerPlace = new int[lowerRow.length];
    lowerColumnByRow = new int[lowerRow.length];
    leftCount = new int[n];
    orderByRow();
    places = IntStream.range(0, n * n).filter(e -> filled[e] || e % (n + 1) == 0).toArray();
  }

  private void orderByRow() {
    int next = 0;
    for (int row : order) {
      for (int e = 0; e < lowerRow.length; e++) {
        if (lowerRow[e] == row) {
          lowerPlace[e] = next;
          lowerColumnByRow[next++] = lowerColumn[e];
          leftCount[row]++;
        }
      }
    }
  }

  private void collect(List<Entry> lower, List<Entry> upper) {
    for (int place = 0; place < n; place++) {
      int k = order[place];
      for (int later = place + 1; later < n; later++) {
        int i = order[later];
        if (filled[i * n + k]) {
          lower.add(new Entry(i, k));
        }
        if (filled[k * n + i]) {
          upper.add(new Entry(k, i));
        }
      }
    }
  }

  private int cheapest() {
    int best = -1;
    for (int k = 0; k < n; k++) {
      if (!done[k]) {
        belowCount[k] = others(k, k, n);
        rightCount[k] = others(k, k * n, 1);
        if (best < 0 || cost(k) < cost(best)) {
          best = k;
        }
      }
    }
    return best;
  }

  private int cost(int k) {
    return belowCount[k] * rightCount[k];
  }

  /** Number of entries left in a row or column, the pivot k not counted. */
  private int others(int k, int first, int stride) {
    int count = 0;
    for (int i = 0; i < n; i++) {
      if (i != k && !done[i] && filled[first + i * stride]) {
        count++;
      }
    }
    return count;
  }

  private void fill(int k) {
    for (int i = 0; i < n; i++) {
      if (!done[i] && filled[i * n + k]) {
        for (int j = 0; j < n; j++) {
          filled[i * n + j] |= !done[j] && filled[k * n + j];
        }
      }
    }
  }

  boolean isOf(boolean[] entries) {
    return Arrays.equals(original, entries);
  }
}
