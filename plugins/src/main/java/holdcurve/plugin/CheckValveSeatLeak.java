package holdcurve.plugin;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import holdcurve.circuit.Unit;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.flow.SeatLaw;
import holdcurve.part.CheckValve;
import java.util.ArrayList;
import java.util.List;

/** Fuel back past the check valve to the tank: a gap that the pressure itself presses shut. */
public final class CheckValveSeatLeak implements LeakFault {
  private static final double SPRING_PRELOAD = 2e4;

  private static final FaultParameter CLOSING =
      new FaultParameter(
          "how much the pressure helps it shut",
          Unit.NONE,
          new Prior.Between(0, 0.8),
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
    return "Long cranking after standing, while the car starts at once when the pump has been run beforehand; everything is dry.";
  }

  @Override
  public String repair() {
    return "Clean or replace the check valve, or the pump if it is built in.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    List<Site> sites = new ArrayList<>();
    for (Part part : circuit.partsOf(CheckValve.KIND)) {
      sites.add(new Site(part.id(), part.id(), part.to(), List.of(part.id())));
    }
    return sites;
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(LeakSizes.leak(0.5, true), CLOSING);
  }

  @Override
  public double prevalence() {
    return 1.5;
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    SeatLaw seat =
        SeatLaw.throughPoint(parameters[0], LeakSizes.TEST_PRESSURE, SPRING_PRELOAD, parameters[1]);
    String upstream = condition.circuit().part(site.id()).from();
    return condition.with(new LeakPath(site.point(), upstream, seat));
  }
}
