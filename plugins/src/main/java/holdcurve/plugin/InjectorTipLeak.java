package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.PartName;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import java.util.List;

/**
 * One or several injectors drip. All of them sit on one rail, so the size is that of all together
 * and only a drop count tells which.
 */
public final class InjectorTipLeak extends TipLeak {
  @Override
  public String id() {
    return "injector-tip";
  }

  @Override
  public String name() {
    return "Injector drips at its tip";
  }

  @Override
  public String symptoms() {
    return "Hard hot start, black smoke at first, a smell of fuel from the intake. A wet tip when"
        + " the injectors are lifted.";
  }

  @Override
  public String repair() {
    return Cautions.of(Caution.NOTHING_FIRES, Caution.INJECTORS_HELD)
        + " Relieve the pressure, lift the injectors with their rail, prime, and count drops at"
        + " each. Clean or replace those that drip.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(Injector.KIND).stream().map(InjectorTipLeak::site).toList();
  }

  private static Site site(Part part) {
    String where = part.value(Injector.COUNT) > 1 ? "one or several of the " : "";
    return new Site(part.id(), where + PartName.of(part.id()), part.from(), List.of(part.id()));
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.4, true), TRANSITION);
  }
}
