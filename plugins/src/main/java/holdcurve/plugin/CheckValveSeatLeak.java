package holdcurve.plugin;

import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.SeatLaw;
import holdcurve.physics.part.CheckValve;
import java.util.List;

/** Fuel back past the check valve to the tank: a gap that the pressure itself presses shut. */
public final class CheckValveSeatLeak implements LeakFault {
  /** Even a ball without a spring is pushed home by its weight and the first drop [Pa]. */
  private static final double LEAST_PRELOAD = 2e3;

  private static final FaultParameter CLOSING =
      new FaultParameter(
          "how much the pressure helps it shut",
          Unit.NONE,
          new Prior.NearEnds(0, 0.8),
          "assumed: between a scored seat (0) and a soft one (0.8)",
          false);

  @Override
  public String id() {
    return "check-valve-seat";
  }

  @Override
  public String name() {
    return "Check valve leaks back to the tank";
  }

  @Override
  public String symptoms() {
    return "Long cranking after standing. It starts at once when the pump was run first. Everything is dry.";
  }

  @Override
  public String repair() {
    return "Clean or replace the check valve, or the pump if it is built in.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return PartSites.of(circuit, CheckValve.KIND, Part::to);
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.5, true), CLOSING);
  }

  /** Its spring presses the seat as hard as it takes to crack it open. */
  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    Part valve = condition.circuit().part(site.id());
    double preload = Math.max(LEAST_PRELOAD, valve.value(CheckValve.CRACK));
    SeatLaw seat =
        SeatLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, preload, parameters[1]);
    return condition.with(new LeakPath(site.point(), valve.from(), seat));
  }
}
