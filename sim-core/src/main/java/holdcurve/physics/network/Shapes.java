package holdcurve.physics.network;

import holdcurve.physics.circuit.Part;
import java.util.List;
import java.util.function.BiPredicate;

/** Whether parts bring the same at the same points, whatever the sizes. */
final class Shapes {
  private Shapes() {}

  /** Whether two parts are one and the same but for their values. */
  static boolean same(Part a, Part b) {
    return a == b
        || a.kind() == b.kind()
            && a.id().equals(b.id())
            && a.from().equals(b.from())
            && a.to().equals(b.to());
  }

  static boolean same(NetworkBuilder a, NetworkBuilder b) {
    return alike(a.passages, b.passages, Shapes::samePassage)
        && alike(a.made, b.made, (x, y) -> x.from().equals(y.from()) && x.to().equals(y.to()))
        && alike(a.storages, b.storages, (x, y) -> x.point().equals(y.point()))
        && alike(a.liquids, b.liquids, Shapes::sameLiquid)
        && alike(a.walls, b.walls, (x, y) -> x.point().equals(y.point()))
        && alike(a.creeps, b.creeps, Shapes::sameCreep)
        && (a.gaugePoint == null ? b.gaugePoint == null : a.gaugePoint.equals(b.gaugePoint));
  }

  private static boolean samePassage(NetworkBuilder.Passage a, NetworkBuilder.Passage b) {
    return a.open() == b.open()
        && (a.inertance() == 0) == (b.inertance() == 0)
        && a.from().equals(b.from())
        && a.to().equals(b.to())
        && a.name().equals(b.name());
  }

  private static boolean sameLiquid(NetworkBuilder.Liquid a, NetworkBuilder.Liquid b) {
    return a.region() == b.region()
        && (a.volume() > 0) == (b.volume() > 0)
        && a.point().equals(b.point());
  }

  private static boolean sameCreep(NetworkBuilder.Creep a, NetworkBuilder.Creep b) {
    return (a.compliance() > 0) == (b.compliance() > 0) && a.point().equals(b.point());
  }

  private static <T> boolean alike(List<T> a, List<T> b, BiPredicate<T, T> same) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i) != b.get(i) && !same.test(a.get(i), b.get(i))) {
        return false;
      }
    }
    return true;
  }
}
