package holdcurve.fault;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.List;

/**
 * A fault that a fuel circuit can have: the contract for plugins, found by {@link
 * java.util.ServiceLoader}.
 *
 * <p>Stable since contract version {@value #CONTRACT_VERSION}: methods will not be removed or
 * change meaning within it; new ones come with a default. Implementations need a public constructor
 * without arguments, hold no changing state, and may be called from several threads. No argument or
 * result is ever null.
 */
public interface LeakFault {
  int CONTRACT_VERSION = 1;

  /** The contract this fault was written for. */
  default int contractVersion() {
    return CONTRACT_VERSION;
  }

  /**
   * Unique among all faults: lower-case letters, digits and hyphens, such as {@code
   * check-valve-seat}.
   */
  String id();

  /** What a mechanic would call it, such as "Check valve leaks back to the tank". */
  String name();

  /** What is seen or felt on the car, one or two plain sentences. */
  String symptoms();

  /** What puts it right, one or two plain sentences. */
  String repair();

  /** Where in this circuit it can occur; empty if nowhere. */
  List<Site> sites(Circuit circuit);

  /**
   * How bad it is, in the order that {@link #apply} expects. The first is the size that a ranking
   * reports.
   */
  List<FaultParameter> parameters();

  /**
   * How common it is beside other faults, before any reading. One is as common as the faults of the
   * first set on average. The data file of priors overrules it for the faults it lists.
   *
   * @return relative weight [-], positive
   */
  default double prevalence() {
    return 1;
  }

  /**
   * Whether the fall of the pressure after the pump has stopped can speak for this fault. One that
   * acts only while fuel flows says false, so that a ranking made from holds alone leaves it out
   * instead of sharing probability with something it cannot see; it is ranked where readings from
   * before the pump stop would show it, or a joint it wets was found wet. So does one whose whole
   * effect on a hold is what softer hoses would do too.
   */
  default boolean showsInHold() {
    return true;
  }

  /**
   * The circuit with this fault.
   *
   * @param condition the circuit without it
   * @param site one of {@link #sites}
   * @param parameters values [SI], as many as {@link #parameters}
   */
  Condition apply(Condition condition, Site site, double[] parameters);
}
