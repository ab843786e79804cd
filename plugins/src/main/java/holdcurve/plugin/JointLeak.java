package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Unit;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.flow.OpeningJointLaw;
import java.util.List;

/**
 * Fuel past a hose on its stub: an elastomer that the pressure lifts before it leaks in proportion.
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

  @Override
  public String repair() {
    return "Wipe every joint there dry, prime again and look; renew the hose end or clamp that turns wet.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.3, false), OPENING);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    OpeningJointLaw joint =
        OpeningJointLaw.throughPoint(
            parameters[0], LeakSizes.TEST_PRESSURE, parameters[1], SOFTNESS);
    return condition.with(new LeakPath(site.point(), Circuit.AIR, joint));
  }
}
