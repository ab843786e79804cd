package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.OpeningJointLaw;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.flow.ParallelLaw;
import java.util.List;

/**
 * Fuel past a hose on its stub: a crack or groove that stands open, beside an elastomer that the
 * pressure lifts before it leaks in proportion. Which of the two, the curve must say.
 */
abstract class JointLeak implements LeakFault {
  private static final double SOFTNESS = 1e4;

  private static final FaultParameter OPENING =
      new FaultParameter(
          "pressure below which the joint stays dry",
          Unit.BAR,
          new Prior.Between(0, Unit.BAR.toSi(1)),
          "assumed: a slack clamp leaks from the start, a hard hose only under pressure",
          false);

  /** A groove of some tenths of a millimetre is free outflow from the first hundredths of a bar. */
  private static final double GROOVE_TRANSITION = Unit.BAR.toSi(0.05);

  private static final FaultParameter GROOVE =
      new FaultParameter(
          "share that runs through a groove standing open",
          Unit.PERCENT,
          new Prior.NearEnds(0, 1),
          "assumed: between a scored stub (all) and a hard hose (none)",
          false);

  @Override
  public String repair() {
    return Caution.COLD_LAMP.text()
        + " Wipe every joint there dry, prime again and look. Renew the hose end or clamp that turns wet.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.3, true), OPENING, GROOVE);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    double groove = parameters[0] * parameters[2];
    FlowLaw joint =
        new ParallelLaw(
            OpeningJointLaw.throughPoint(
                parameters[0] - groove, LeakSizes.TEST_PRESSURE, parameters[1], SOFTNESS),
            OrificeLaw.throughPoint(groove, LeakSizes.TEST_PRESSURE, GROOVE_TRANSITION));
    return condition.with(new LeakPath(site.point(), Circuit.AIR, joint));
  }
}
