package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Gauge;
import java.util.List;

/**
 * Air left in the rail after work on it, counted with the air in the gauge's hose. It is a spring:
 * pressure builds up slowly and every leak pulls it down slowly. That is what softer hoses would do
 * too, so a hold by itself can't speak for it.
 *
 * <p>Air also dissolves in petrol under pressure, within minutes to hours, which pulls the pressure
 * down a little; that is left out.
 */
public final class TrappedAir extends PartChange {
  private static final FaultParameter AIR =
      new FaultParameter(
          "trapped air, at no pressure",
          Unit.MILLILITRE,
          new Prior.LogNormal(Unit.MILLILITRE.toSi(25), 2.5),
          "assumed: from a dead end of the rail (5) to a filter that was not filled (150)",
          true);

  public TrappedAir() {
    super(Gauge.KIND);
  }

  @Override
  public String id() {
    return "trapped-air";
  }

  @Override
  public String name() {
    return "Air is trapped in the rail";
  }

  @Override
  public String symptoms() {
    return "After work on the circuit the needle climbs slowly and sinks slowly. After more priming it jumps up.";
  }

  @Override
  public String repair() {
    return Caution.FLUSH_RETURN.text()
        + " Run the pump for a minute or two, bleed the gauge hose into a can, and repeat the hold.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(AIR);
  }

  @Override
  Condition change(Condition condition, Part gauge, double[] parameters) {
    return condition.with(gauge.id(), Gauge.AIR, gauge.value(Gauge.AIR) + parameters[0]);
  }
}
