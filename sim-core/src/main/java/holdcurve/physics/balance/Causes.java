package holdcurve.physics.balance;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.network.Element;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Which cause each element of a network stands for. */
final class Causes {
  private final Map<String, Cause> byName = new HashMap<>();

  Causes(Circuit circuit) {
    for (Part part : circuit.parts()) {
      if (part.kind() == CheckValve.KIND) {
        byName.put(part.id(), Cause.WEEP);
      } else if (part.kind() == Regulator.KIND) {
        byName.put(part.id() + " seat", Cause.WEEP);
        byName.put(part.id(), Cause.RESEAT);
      } else if (part.kind() == Injector.KIND || part.kind() == ColdStartInjector.KIND) {
        byName.put(part.id() + " tip", Cause.WEEP);
      }
    }
  }

  /** Empty for leaks, which are asked for by themselves. */
  Optional<Cause> of(Element element) {
    String name = element.name();
    if (name.startsWith("leak from ")) {
      return Optional.empty();
    }
    if (name.startsWith("hose stretch at ")) {
      return Optional.of(Cause.CREEP);
    }
    if (name.startsWith("fuel temperature")) {
      return Optional.of(Cause.TEMPERATURE);
    }
    if (name.startsWith("clamped ")) {
      return Optional.of(Cause.CLAMP);
    }
    return Optional.of(byName.getOrDefault(name, Cause.OTHER));
  }
}
