package holdcurve.record.job;

import holdcurve.physics.circuit.Circuit;
import holdcurve.record.limit.PassLimit;
import holdcurve.record.refit.RefitList;
import java.util.ArrayList;
import java.util.List;

/**
 * What was done to the circuit, and what it must hold afterwards.
 *
 * @param repairs in the order they were done
 * @param pass what a hold without clamps must still show
 * @param passStated whether the job states that limit, rather than taking the usual one
 * @param refit steps from parts on the bench to the first pressurisation
 * @param refitStated whether the job carries its own list, rather than taking the shipped one
 */
public record Upkeep(
    List<Repair> repairs,
    PassLimit pass,
    boolean passStated,
    RefitList refit,
    boolean refitStated) {
  public Upkeep {
    repairs = List.copyOf(repairs);
  }

  /** No repair, the usual limit, and the shipped list with nothing ticked. */
  public static Upkeep none(Circuit circuit) {
    return new Upkeep(List.of(), PassLimit.usual(circuit), false, RefitList.shipped(), false);
  }

  /** The job's own limit, or the usual one of a circuit, which may be a changed one. */
  public PassLimit passOf(Circuit circuit) {
    return passStated ? pass : PassLimit.usual(circuit);
  }

  /** The same with one more repair at the end. */
  public Upkeep withRepair(Repair repair) {
    List<Repair> more = new ArrayList<>(repairs);
    more.add(repair);
    return withRepairs(more);
  }

  /** The same without a repair. */
  public Upkeep withoutRepair(Repair repair) {
    return withRepairs(repairs.stream().filter(other -> other != repair).toList());
  }

  /** The same with other repairs. */
  public Upkeep withRepairs(List<Repair> others) {
    return new Upkeep(others, pass, passStated, refit, refitStated);
  }

  /** The same with a refit list of the job's own. */
  public Upkeep withRefit(RefitList list) {
    return new Upkeep(repairs, pass, passStated, list, true);
  }
}
