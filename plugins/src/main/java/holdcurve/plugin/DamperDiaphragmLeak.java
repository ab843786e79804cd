package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.part.Damper;
import java.util.List;

/**
 * Fuel through a cracked diaphragm into the vented spring side of the damper. Fuel behind the
 * diaphragm takes away part of its stroke, so the circuit stores less and the same leak pulls the
 * pressure down faster.
 */
public final class DamperDiaphragmLeak implements LeakFault {
  private static final FaultParameter TRANSITION =
      LeakSizes.transition(0.5, 8, "from a torn diaphragm (runs) to a porous one (seeps)");

  private static final FaultParameter LOST =
      new FaultParameter(
          "part of its stroke that it has lost",
          Unit.PERCENT,
          new Prior.Between(0, 0.95),
          "assumed: from a pinhole (nothing lost) to a torn diaphragm (nearly all)",
          false);

  @Override
  public String id() {
    return "damper-diaphragm";
  }

  @Override
  public String name() {
    return "Damper diaphragm leaks";
  }

  @Override
  public String symptoms() {
    return "The damper's vent or adjusting screw is wet or smells of fuel. The feed hums and the"
        + " needle trembles while the pump runs.";
  }

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe the damper's vent dry, prime and look again. Replace the damper if it turns wet.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, Damper.KIND, Part::from);
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.4, true), TRANSITION, LOST);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    Part damper = condition.circuit().part(site.id());
    double stroke = damper.value(Damper.STROKE_VOLUME) * (1 - parameters[2]);
    OrificeLaw crack =
        OrificeLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, parameters[1]);
    return condition
        .with(damper.id(), Damper.STROKE_VOLUME, stroke)
        .with(new LeakPath(site.point(), Circuit.AIR, crack));
  }
}
