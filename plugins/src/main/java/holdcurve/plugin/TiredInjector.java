package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Injector;
import java.util.List;

/**
 * Injectors that spray too little: gum or a clogged basket. Shut, they hold as well as new ones.
 */
public final class TiredInjector extends PartChange {
  private static final FaultParameter FLOW =
      new FaultParameter(
          "flow left, of new ones",
          Unit.PERCENT,
          new Prior.Between(0.5, 0.97),
          "assumed: a few percent between new ones is common practice",
          false);

  public TiredInjector() {
    super(Injector.KIND);
  }

  @Override
  public String id() {
    return "tired-injector";
  }

  @Override
  public String name() {
    return "Injectors spray too little";
  }

  @Override
  public String symptoms() {
    return "Lean running, uneven idle, hesitation when the throttle opens, while pressure and hold are right.";
  }

  @Override
  public String repair() {
    return "Measure each one on the flow bench against the others. Clean, renew filter baskets and seals, and replace those that stay low.";
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(FLOW);
  }

  @Override
  Condition change(Condition condition, Part injector, double[] parameters) {
    double flow = injector.value(Injector.STATIC_FLOW) * parameters[0];
    return condition.with(injector.id(), Injector.STATIC_FLOW, flow);
  }
}
