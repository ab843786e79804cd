package holdcurve.inference.finding;

import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.hold.Hold;
import java.util.List;

/**
 * A way that things may really be: one hypothesis at one point of its unknowns. Good for the call
 * in which it is handed over; answers are worked out when asked for.
 */
public interface CircuitState {
  /** A fault at a place. */
  record Member(LeakFault fault, Site site) {
    /** {@code fault@site}, as a ranking writes it. */
    public String id() {
      return fault.id() + "@" + site.id();
    }
  }

  /** For {@link #condition}: over all tests, without what differs from one hold to the next. */
  int ALL_TESTS = -1;

  /** The faults that are there; none for a sound circuit. */
  List<Member> members();

  /** The circuit without the members' faults: only the weep of sound seats. */
  Condition sound();

  /**
   * The circuit with the members' faults.
   *
   * @param test place of a hold test in the job, or {@link #ALL_TESTS}
   */
  Condition condition(int test);

  /**
   * The leaks that one of the members opens.
   *
   * @param member place in {@link #members}
   * @param test as for {@link #condition}
   */
  List<LeakPath> leaks(int member, int test);

  /** How a hold test was begun and clamped, and with which circuit. */
  Hold hold(int test);

  /** Error common to all readings of the gauge [Pa]. */
  double gaugeOffset();

  /** Standard deviation of one reading about the true needle [Pa]. */
  double readingDeviation();

  /**
   * An unknown that only one piece of side evidence has; 0, its middle, where it isn't followed.
   *
   * @param of whose
   * @param k which, below {@link FindingLikelihood#unknowns}
   */
  default double unknown(FindingLikelihood of, int k) {
    return 0;
  }
}
