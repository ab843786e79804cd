package holdcurve.physics.ode;

import java.util.ArrayList;
import java.util.List;

/** Rooted trees, which index the order conditions of one-step methods (Butcher). */
record RootedTree(List<RootedTree> children) {

  int order() {
    return 1 + children.stream().mapToInt(RootedTree::order).sum();
  }

  /** γ(tree): its order times the densities of its children. */
  double density() {
    return children.stream().mapToDouble(RootedTree::density).reduce(order(), (a, b) -> a * b);
  }

  /** All trees of an order: 1, 1, 2, 4, 9 for orders 1 to 5. */
  static List<RootedTree> ofOrder(int order) {
    List<RootedTree> trees = new ArrayList<>();
    forests(order - 1, order - 1, Integer.MAX_VALUE).forEach(f -> trees.add(new RootedTree(f)));
    return trees;
  }

  /** Lists of trees with {@code total} vertices, in falling order of size, then of place. */
  private static List<List<RootedTree>> forests(int total, int largest, int place) {
    if (total == 0) {
      return List.of(List.of());
    }
    List<List<RootedTree>> all = new ArrayList<>();
    for (int size = Math.min(total, largest); size >= 1; size--) {
      List<RootedTree> heads = ofOrder(size);
      int end = size == largest ? Math.min(place, heads.size() - 1) : heads.size() - 1;
      for (int head = 0; head <= end; head++) {
        for (List<RootedTree> rest : forests(total - size, size, head)) {
          List<RootedTree> forest = new ArrayList<>(List.of(heads.get(head)));
          forest.addAll(rest);
          all.add(forest);
        }
      }
    }
    return all;
  }

  @Override
  public String toString() {
    return children.toString();
  }
}
