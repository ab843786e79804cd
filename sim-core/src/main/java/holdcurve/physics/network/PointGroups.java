package holdcurve.physics.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which connection points are treated as one place. */
final class PointGroups {
  private final Map<String, String> parent = new HashMap<>();
  private final List<String> order = new ArrayList<>();

  void add(String point) {
    if (parent.putIfAbsent(point, point) == null) {
      order.add(point);
    }
  }

  void join(String a, String b) {
    String first = representative(a);
    String second = representative(b);
    if (!first.equals(second)) {
      parent.put(second, first);
    }
  }

  String representative(String point) {
    String up = parent.get(point);
    while (!up.equals(point)) {
      point = up;
      up = parent.get(point);
    }
    return point;
  }

  /** Representative → its points, both in order of first mention. */
  Map<String, List<String>> groups() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (String point : order) {
      groups.computeIfAbsent(representative(point), key -> new ArrayList<>()).add(point);
    }
    return groups;
  }
}
