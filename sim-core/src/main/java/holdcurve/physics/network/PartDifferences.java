package holdcurve.physics.network;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.storage.Storage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Finds how a network changes with the sizes of its parts by asking only the parts that differ. It
 * gives up, with null, where more than sizes changes or where liquid does, which many rows depend
 * on. Used once.
 */
final class PartDifferences {
  private final Network base;
  private final PartMemory memory;
  private final NetworkStructure structure;
  private final Contributions before;
  private final List<Element> added = new ArrayList<>();
  private final List<Element> removed = new ArrayList<>();
  private final List<NetworkDifference.Capacity> capacities = new ArrayList<>();
  private double[] each;
  private double[] compliance;
  private double[] time;
  private int[] movedWalls;

  PartDifferences(Network base, PartMemory memory) {
    this.base = base;
    this.memory = memory;
    structure = base.origin().structure();
    before = base.origin().contributions();
  }

  /** The variant; null if that takes whole networks to tell. */
  NetworkVariant variant(Condition condition, Operation operation) {
    if (!before.operation().isLikeButForClamps(operation)
        || !before.operation().clamps().keySet().equals(operation.clamps().keySet())
        || before.circuit().fluid() != condition.circuit().fluid()
        || !parts(condition, operation)
        || !leaks(condition)
        || !creepHolds()) {
      return null;
    }
    CreepPlan.Walls walls = base.origin().walls();
    if (each != null) {
      CreepPlan.Walls moved = new CreepPlan.Walls(structure.creep(), each, compliance, time);
      moved.addDifference(walls, added, removed);
      walls = moved;
    }
    NetworkDifference difference =
        added.isEmpty() && removed.isEmpty() && capacities.isEmpty()
            ? NetworkDifference.NONE
            : NetworkDifference.of(added, removed, capacities, base.getDimension());
    return new NetworkVariant(base, difference, walls);
  }

  private boolean parts(Condition condition, Operation operation) {
    List<Part> old = before.circuit().parts();
    List<Part> fresh = condition.circuit().parts();
    if (old.size() != fresh.size()) {
      return false;
    }
    boolean clampsMoved = before.operation().clamps() != operation.clamps();
    for (int i = 0; i < old.size(); i++) {
      Part a = old.get(i);
      Part b = fresh.get(i);
      boolean same = a == b || a.equals(b);
      if (same && (!clampsMoved || before.operation().clampsLike(operation, a.id()))) {
        continue;
      }
      if (!Shapes.same(a, b)
          || !part(i, before.parts()[i], memory.brought(condition.circuit(), b, operation))) {
        return false;
      }
    }
    return true;
  }

  private boolean part(int i, NetworkBuilder old, NetworkBuilder fresh) {
    if (!Shapes.same(old, fresh)
        || !old.liquids.equals(fresh.liquids)
        || old.gaugeLag != fresh.gaugeLag) {
      return false;
    }
    walls(old, fresh);
    storages(old, fresh);
    creeps(structure.firstCreep(i), old, fresh);
    passages(structure.firstPassage(i), old.passages, fresh.passages);
    int made = structure.firstMade(i);
    for (int k = 0; k < fresh.made.size(); k++) {
      replace(made + k, structure.made(fresh.made.get(k), made + k));
    }
    return true;
  }

  private void walls(NetworkBuilder old, NetworkBuilder fresh) {
    for (int k = 0; k < fresh.walls.size(); k++) {
      double more = fresh.walls.get(k).compliance() - old.walls.get(k).compliance();
      int row = more == 0 ? -1 : structure.row(fresh.walls.get(k).point());
      if (row >= 0) {
        addCapacity(row, more, new Storage[0], new Storage[0]);
      }
    }
  }

  private void storages(NetworkBuilder old, NetworkBuilder fresh) {
    for (int k = 0; k < fresh.storages.size(); k++) {
      Storage from = old.storages.get(k).storage();
      Storage to = fresh.storages.get(k).storage();
      int row = from.equals(to) ? -1 : structure.row(fresh.storages.get(k).point());
      if (row >= 0) {
        addCapacity(row, 0, new Storage[] {to}, new Storage[] {from});
      }
    }
  }

  private void addCapacity(int row, double constant, Storage[] gained, Storage[] lost) {
    for (int i = 0; i < capacities.size(); i++) {
      if (capacities.get(i).node() == row) {
        capacities.set(i, capacities.get(i).plus(constant, gained, lost));
        return;
      }
    }
    capacities.add(new NetworkDifference.Capacity(row, constant, gained, lost));
  }

  private void creeps(int first, NetworkBuilder old, NetworkBuilder fresh) {
    int[] placeOf = structure.creep().placeOf;
    for (int k = 0; k < fresh.creeps.size(); k++) {
      NetworkBuilder.Creep from = old.creeps.get(k);
      NetworkBuilder.Creep to = fresh.creeps.get(k);
      int place = placeOf[first + k];
      if (place >= 0 && !from.equals(to)) {
        copyWalls();
        each[first + k] = to.compliance();
        compliance[place] += to.compliance() - from.compliance();
        if (to.relaxationTime() != from.relaxationTime()) {
          movedWalls[place]++;
          boolean first0 = movedWalls[place] == 1;
          boolean agrees = first0 || time[place] == to.relaxationTime();
          time[place] = agrees ? to.relaxationTime() : Double.NaN;
        }
      }
    }
  }

  private void copyWalls() {
    if (each == null) {
      CreepPlan.Walls walls = base.origin().walls();
      each = walls.each().clone();
      compliance = walls.compliance().clone();
      time = walls.time().clone();
      movedWalls = new int[time.length];
    }
  }

  /** Whether walls that shared a relaxation time still do, and no two rows have come to. */
  private boolean creepHolds() {
    if (each == null) {
      return true;
    }
    int[] members = new int[time.length];
    for (int place : structure.creep().placeOf) {
      if (place >= 0) {
        members[place]++;
      }
    }
    for (int i = 0; i < time.length; i++) {
      if (Double.isNaN(time[i]) || movedWalls[i] != 0 && movedWalls[i] != members[i]) {
        return false;
      }
    }
    return structure.creep().distinct(time);
  }

  private void passages(
      int first, List<NetworkBuilder.Passage> old, List<NetworkBuilder.Passage> fresh) {
    for (int k = 0; k < fresh.size(); k++) {
      if (structure.elementOf(first + k) >= 0) {
        replace(first + k, structure.passage(fresh.get(k), first + k));
      }
    }
  }

  private void replace(int i, Element fresh) {
    Element old = base.element(structure.elementOf(i));
    if (!fresh.equals(old)) {
      removed.add(old);
      added.add(fresh);
    }
  }

  private boolean leaks(Condition condition) {
    List<LeakPath> old = before.condition().leaks();
    List<LeakPath> fresh = condition.leaks();
    if (old.size() != fresh.size()) {
      return false;
    }
    int first = structure.firstPassage(before.parts().length - 1);
    for (int k = 0; k < fresh.size(); k++) {
      LeakPath a = old.get(k);
      LeakPath b = fresh.get(k);
      if (!a.from().equals(b.from()) || !a.to().equals(b.to())) {
        return false;
      }
      int place = structure.elementOf(first + k);
      if (place >= 0 && !Objects.equals(a.law(), b.law())) {
        Element element = base.element(place);
        removed.add(element);
        added.add(leak(element.name(), first + k, b.law()));
      }
    }
    return true;
  }

  private Element leak(String name, int i, FlowLaw law) {
    return new FlowElement(name, structure.from(i), structure.to(i), law);
  }
}
