package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Pump;
import java.util.List;

/**
 * A pump that delivers less and pushes less hard: worn, short of voltage, or leaking past its own
 * relief valve ahead of the check valve.
 */
public final class WeakPump extends PartChange {
  private static final FaultParameter DELIVERY =
      new FaultParameter(
          "delivery left, of a sound one",
          Unit.PERCENT,
          new Prior.Between(0.1, 0.8),
          "assumed: below a tenth it would not run at all",
          false);

  private static final FaultParameter PUSH =
      new FaultParameter(
          "highest pressure left, of a sound one",
          Unit.PERCENT,
          new Prior.Between(0.05, 1),
          "assumed: from a relief valve that hangs open (0.05) to a dry inlet (1)",
          false);

  public WeakPump() {
    super(Pump.KIND);
  }

  @Override
  public String id() {
    return "weak-pump";
  }

  @Override
  public String name() {
    return "Pump is weak";
  }

  @Override
  public String symptoms() {
    return "Pressure builds up slowly and may not reach what the regulator is set to. The engine starves at full load. The hold itself is good.";
  }

  @Override
  public String repair() {
    return Caution.RETURN_CAN.text()
        + " Measure the delivery there, and the voltage at the pump while it runs. Clear the tank strainer, mend the wiring, or replace the pump.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(DELIVERY, PUSH);
  }

  @Override
  Condition change(Condition condition, Part pump, double[] parameters) {
    return condition
        .with(pump.id(), Pump.FREE_FLOW, pump.value(Pump.FREE_FLOW) * parameters[0])
        .with(pump.id(), Pump.STALL, pump.value(Pump.STALL) * parameters[1]);
  }
}
