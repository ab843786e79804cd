package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OpeningJointLaw;
import holdcurve.physics.part.Regulator;
import java.util.List;

/**
 * A regulator that hangs open until well below its set pressure: it bleeds in proportion to what is
 * left over, then holds.
 */
public final class RegulatorLowReseat implements LeakFault {
  private static final double SOFTNESS = 1e3;

  private static final FaultParameter DROP =
      new FaultParameter(
          "shuts this far below its set pressure",
          Unit.BAR,
          new Prior.LogNormal(Unit.BAR.toSi(0.35), 1.8),
          "assumed: a healthy one shuts within 0.05 bar",
          true);

  private static final FaultParameter BLEED =
      new FaultParameter(
          "flow back for each bar above where it shuts",
          Unit.LITRE_PER_MINUTE_BAR,
          new Prior.LogNormal(Unit.LITRE_PER_MINUTE_BAR.toSi(0.03), 3),
          "assumed: the first fall takes seconds",
          false);

  @Override
  public String id() {
    return "regulator-low-reseat";
  }

  @Override
  public String name() {
    return "Regulator shuts too low";
  }

  @Override
  public String symptoms() {
    return "A quick first fall when the pump stops, then the needle stands. The car starts well.";
  }

  @Override
  public String repair() {
    // five times: common practice, no source
    return "Switch the pump on and off five times, to flush the regulator's seat, and hold again."
        + " If the needle still drops quickly at first and the engine starts badly, replace the"
        + " regulator. If it starts well, the regulator may stay.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, Regulator.KIND, Part::from);
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(DROP, BLEED);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    Part regulator = condition.circuit().part(site.id());
    double shut = Math.max(0, regulator.value(Regulator.SET) - parameters[0]);
    return condition.with(
        new LeakPath(
            site.point(), regulator.to(), new OpeningJointLaw(parameters[1], shut, SOFTNESS)));
  }
}
