package holdcurve.fault;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.FlowLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A fault whose every answer is looked at before it goes on. What it said of itself is kept from
 * the first time; its sites and conditions are checked each time, and a wrong one becomes a {@link
 * FaultFailure}.
 */
final class GuardedFault implements LeakFault {
  private final LeakFault fault;
  private final FaultDescription said;
  private final PluginCall call;
  private final PluginRecord record = new PluginRecord();

  /**
   * @param said by the fault, found good by {@link FaultCheck}
   */
  GuardedFault(LeakFault fault, FaultDescription said, PluginCall call) {
    this.fault = fault;
    this.said = said;
    this.call = call;
  }

  @Override
  public int contractVersion() {
    return said.contractVersion();
  }

  @Override
  public String id() {
    return said.id();
  }

  @Override
  public String name() {
    return said.name();
  }

  @Override
  public String symptoms() {
    return said.symptoms();
  }

  @Override
  public String repair() {
    return said.repair();
  }

  @Override
  public List<FaultParameter> parameters() {
    return said.parameters();
  }

  @Override
  public double prevalence() {
    return said.prevalence();
  }

  @Override
  public boolean showsInHold() {
    return said.showsInHold();
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    record.requireNotHung();
    try {
      List<Site> sites =
          call.ask(id(), "it was asked for its sites", () -> copy(fault.sites(circuit)));
      refuse(sites == null ? "gave no list of sites" : ConditionCheck.problem(sites, circuit));
      return List.copyOf(sites);
    } catch (FaultFailure e) {
      throw record.note(e);
    }
  }

  @Override
  public Condition apply(Condition condition, Site site, double[] parameters) {
    record.requireNotHung();
    try {
      return call.ask(
          id(),
          "it was asked for a condition",
          () -> {
            Condition after = fault.apply(condition, site, parameters.clone());
            refuse(ConditionCheck.problem(condition, after));
            return guarded(condition, after);
          });
    } catch (FaultFailure e) {
      throw record.note(e);
    }
  }

  /** The first failure since it was loaded. */
  Optional<FaultFailure> failure() {
    return record.failure();
  }

  private Condition guarded(Condition before, Condition after) {
    List<LeakPath> leaks = after.leaks();
    for (int i = before.leaks().size(); i < leaks.size(); i++) {
      LeakPath leak = leaks.get(i);
      if (guarded(leak) != leak.law()) {
        List<LeakPath> changed = new ArrayList<>(leaks);
        changed.replaceAll(l -> new LeakPath(l.from(), l.to(), guarded(l)));
        return new Condition(after.circuit(), changed);
      }
    }
    return after;
  }

  private FlowLaw guarded(LeakPath leak) {
    return GuardedLaw.around(id(), leak.law(), record);
  }

  private void refuse(String problem) {
    if (!problem.isEmpty()) {
      throw new FaultFailure(id(), problem);
    }
  }

  private static List<Site> copy(List<Site> sites) {
    return sites == null ? null : new ArrayList<>(sites);
  }

  @Override
  public String toString() {
    return "fault '" + id() + "'";
  }
}
