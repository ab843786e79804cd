package holdcurve.physics.part;

import holdcurve.physics.circuit.PartKind;
import java.util.List;
import java.util.Optional;

/**
 * Every kind of part that a circuit file can name. A new kind is a class beside this one and a line
 * here.
 */
public final class PartKinds {
  private static final List<PartKind> ALL =
      List.of(
          Tank.KIND,
          Pump.KIND,
          CheckValve.KIND,
          RigidPipe.KIND,
          Hose.KIND,
          Filter.KIND,
          Rail.KIND,
          Damper.KIND,
          Accumulator.KIND,
          Regulator.KIND,
          Injector.KIND,
          ColdStartInjector.KIND,
          Joint.KIND,
          Gauge.KIND);

  private PartKinds() {}

  /** In the order in which to offer them. */
  public static List<PartKind> all() {
    return ALL;
  }

  /** The kind that files call {@code id}; empty if there is none. */
  public static Optional<PartKind> byId(String id) {
    return ALL.stream().filter(kind -> kind.id().equals(id)).findFirst();
  }
}
