package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Filter;
import java.util.List;

/**
 * A filter that takes much pressure. Nothing flows through it in a hold, so a hold can't show it.
 */
public final class CloggedFilter extends PartChange {
  private static final FaultParameter DROP =
      new FaultParameter(
          "pressure it takes at 1 L/min",
          Unit.BAR,
          new Prior.LogNormal(Unit.BAR.toSi(1.5), 2),
          "assumed: a clean one takes about 0.05 bar, and below 1 bar no engine draws enough to"
              + " notice",
          false);

  public CloggedFilter() {
    super(Filter.KIND);
  }

  @Override
  public String id() {
    return "clogged-filter";
  }

  @Override
  public String name() {
    return "Fuel filter is clogged";
  }

  @Override
  public String symptoms() {
    return "Pressure builds up slowly, and sags when the engine draws much. The car lacks power"
        + " uphill but starts well.";
  }

  @Override
  public String repair() {
    return "Replace the filter, and find out where the dirt comes from before the new one clogs.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(DROP);
  }

  /** Never better than the sound filter. */
  @Override
  Condition change(Condition condition, Part filter, double[] parameters) {
    double drop = Math.max(parameters[0], filter.value(Filter.DROP));
    return condition.with(filter.id(), Filter.DROP, drop);
  }
}
