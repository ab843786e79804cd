package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.PartName;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Pump;
import java.util.List;

/**
 * Fuel back to the tank past a relief valve that sits after the check valve.
 *
 * <p>A relief valve ahead of the check valve, the usual place, is cut off from the held pressure:
 * leaking, it makes a weak pump and no fall. Only one on the feed side, from feed line to tank, is
 * meant here. Circuit files don't say where it sits, so the site is offered wherever there is a
 * check valve behind a pump, with a small weight.
 */
public final class PumpReliefLeak implements LeakFault {
  private static final FaultParameter LIFTING =
      new FaultParameter(
          "how much the pressure lifts it",
          Unit.NONE,
          new Prior.Between(0, 1),
          "assumed: between dirt that holds it open (0) and a tired spring (1)",
          false);

  @Override
  public String id() {
    return "pump-relief";
  }

  @Override
  public String name() {
    return "Relief valve on the feed leaks back to the tank";
  }

  @Override
  public String symptoms() {
    return "Long cranking and everything dry, as with a leaking check valve. The fall is quick at first.";
  }

  @Override
  public String repair() {
    return Cautions.of(Caution.DEAD_HEAD, Caution.CLAMPS)
        + " See whether a relief valve leads from the feed line back to the tank. If so clamp or plug its outlet and repeat the hold. One inside the pump ahead of the check valve can't be the cause.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(CheckValve.KIND).stream()
        .filter(valve -> pump(circuit, valve) != null)
        .map(
            valve ->
                new Site(
                    valve.id(),
                    "relief valve after the " + PartName.of(valve.id()) + ", if there is one",
                    valve.to(),
                    List.of(pump(circuit, valve).id())))
        .toList();
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.4, true), LIFTING);
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    Circuit circuit = condition.circuit();
    Part pump = pump(circuit, circuit.part(site.id()));
    LiftedSeatLaw seat =
        LiftedSeatLaw.throughPoint(
            parameters[0], LeakSizes.TEST_PRESSURE, pump.value(Pump.RELIEF), parameters[1]);
    return condition.with(new LeakPath(site.point(), pump.from(), seat));
  }

  /** The pump that delivers into a check valve; null if there is none. */
  private static Part pump(Circuit circuit, Part valve) {
    return circuit.partsOf(Pump.KIND).stream()
        .filter(pump -> pump.to().equals(valve.from()))
        .findFirst()
        .orElse(null);
  }
}
