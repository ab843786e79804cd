package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Regulator;
import java.util.List;

/**
 * A regulator that keeps less pressure than is stated, while the pump runs and after: a tired
 * spring, an adjuster turned out, or the wrong one. It shuts well, so the hold begins low and
 * stands.
 */
public final class RegulatorSetLow extends PartChange {
  private static final FaultParameter DROP =
      new FaultParameter(
          "opens this far below the pressure stated for it",
          Unit.BAR,
          new Prior.LogNormal(Unit.BAR.toSi(0.4), 1.8),
          "assumed: a sound one opens within 5 % of what is stated",
          false);

  /** Pressure that any spring leaves [Pa]. */
  private static final double LEAST = 1e4;

  public RegulatorSetLow() {
    super(Regulator.KIND);
  }

  @Override
  public String id() {
    return "regulator-set-low";
  }

  @Override
  public String name() {
    return "Regulator is set too low";
  }

  @Override
  public String symptoms() {
    return "Pressure comes up at once but stands too low while the pump runs. Then it holds. The engine runs lean.";
  }

  @Override
  public String repair() {
    return "Compare the number on the regulator with the parts list. Set it if it has an adjuster,"
        + " else replace it.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(DROP);
  }

  @Override
  Condition change(Condition condition, Part regulator, double[] parameters) {
    double set = Math.max(LEAST, regulator.value(Regulator.SET) - parameters[0]);
    return condition.with(regulator.id(), Regulator.SET, set);
  }
}
