package holdcurve.plugin;

import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import java.util.List;

/**
 * A fault that loses no fuel: one kind of part does its work badly, which shows while fuel flows.
 */
abstract class PartChange implements LeakFault {
  private final PartKind kind;

  PartChange(PartKind kind) {
    this.kind = kind;
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, kind, Part::to);
  }

  @Override
  public boolean showsInHold() {
    return false;
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    return change(condition, condition.circuit().part(site.id()), parameters);
  }

  abstract Condition change(Condition condition, Part part, double[] parameters);
}
