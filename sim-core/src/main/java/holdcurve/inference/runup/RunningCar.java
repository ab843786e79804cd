package holdcurve.inference.runup;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Seats;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A circuit in some condition as it matters while the pump runs: what isn't known of pump, filter,
 * regulator and injectors added; weeps and creep, which do next to nothing there, left out; leaks
 * as proportional to pressure. So conditions that differ in such things alone are the same.
 */
final class RunningCar {
  /** An unknown: a property that a factor is put to. */
  private record Unknown(PartKind kind, Property property, double statedSpread) {}

  private static final Map<PartKind, List<Property>> IDLE =
      Map.of(
          Hose.KIND,
          List.of(Hose.QUICK_CREEP, Hose.SLOW_CREEP, Hose.CLAMP_AT),
          CheckValve.KIND,
          List.of(CheckValve.WEEP),
          Regulator.KIND,
          List.of(Regulator.WEEP),
          Injector.KIND,
          List.of(Injector.WEEP),
          ColdStartInjector.KIND,
          List.of(ColdStartInjector.WEEP));

  /** How many unknowns a running circuit has. */
  static final int UNKNOWNS = 5;

  /** What each is, in words that "rather high" can follow. */
  static final List<String> WORDS =
      List.of(
          "a pump's delivery",
          "a pump's highest pressure",
          "a filter's resistance",
          "a regulator's opening under excess pressure",
          "a flow of the injectors");

  private final Circuit described;
  private final List<Unknown> unknowns;

  RunningCar(Circuit described, Running priors) {
    this.described = described;
    unknowns =
        List.of(
            new Unknown(Pump.KIND, Pump.FREE_FLOW, priors.pumpFlow()),
            new Unknown(Pump.KIND, Pump.STALL, priors.pumpStall()),
            new Unknown(Filter.KIND, Filter.DROP, priors.filterDrop()),
            new Unknown(Regulator.KIND, Regulator.GAIN, priors.regulatorGain()),
            new Unknown(Injector.KIND, Injector.STATIC_FLOW, priors.injectorFlow()));
  }

  /**
   * @param condition with the faults
   * @param sound the same without them; what a fault has set is left as the fault has it
   * @param z one a unknown [-]
   */
  Condition of(Condition condition, Circuit sound, double[] z) {
    Circuit circuit = condition.circuit().map(part -> of(part, sound.part(part.id()), z));
    List<LeakPath> leaks = new ArrayList<>();
    for (LeakPath leak : condition.leaks()) {
      double flow = leak.law().flow(Seats.TEST_PRESSURE);
      if (flow > 0) {
        LaminarLaw law = LaminarLaw.throughPoint(rounded(flow), Seats.TEST_PRESSURE);
        leaks.add(new LeakPath(leak.from(), leak.to(), law));
      }
    }
    return new Condition(circuit, leaks);
  }

  private Part of(Part part, Part sound, double[] z) {
    Part changed = part;
    for (Property idle : IDLE.getOrDefault(part.kind(), List.of())) {
      changed = changed.with(idle, idle == Hose.CLAMP_AT ? idle.standard() : 0);
    }
    for (int k = 0; k < UNKNOWNS; k++) {
      Unknown unknown = unknowns.get(k);
      Property property = unknown.property();
      if (unknown.kind() == part.kind() && part.value(property) == sound.value(property)) {
        boolean stated = described.part(part.id()).states(property);
        double spread = stated ? unknown.statedSpread() : property.spread();
        changed = changed.with(property, part.value(property) * Math.exp(spread * z[k]));
      }
    }
    return changed;
  }

  /** To what a leak's law can't be told by at the test pressure: a bend leaves it alone there. */
  private static double rounded(double flow) {
    return (float) flow;
  }
}
