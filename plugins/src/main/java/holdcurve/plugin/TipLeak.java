package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.OrificeLaw;

/**
 * Fuel past a needle or a plunger into the intake: a short annular hole, an orifice with a laminar
 * beginning.
 */
abstract class TipLeak implements LeakFault {
  static final FaultParameter TRANSITION =
      LeakSizes.transition(0.5, 8, "from a score (runs) to a gap of some micrometres (seeps)");

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    OrificeLaw tip = OrificeLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, parameters[1]);
    return condition.with(new LeakPath(site.point(), Circuit.MANIFOLD, tip));
  }
}
