package holdcurve.inference.finding;

import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.hold.Hold;
import java.util.List;

/** A truth with leaks of a known size, in proportion to pressure. */
record Supposed(Circuit circuit, List<Member> members, List<LeakPath> paths)
    implements CircuitState {
  /** A sound circuit. */
  static Supposed sound(Circuit circuit) {
    return new Supposed(circuit, List.of(), List.of());
  }

  /**
   * One leak.
   *
   * @param flow at 2 bar [mL/min]
   */
  static Supposed leak(Circuit circuit, String from, String to, double flow, String... parts) {
    Site site = new Site("site", "somewhere", from, List.of(parts));
    LeakPath path = new LeakPath(from, to, LaminarLaw.throughPoint(flow / 60e6, 2e5));
    return new Supposed(circuit, List.of(new Member(null, site)), List.of(path));
  }

  @Override
  public Condition sound() {
    return Condition.sound(circuit);
  }

  @Override
  public Condition condition(int test) {
    return new Condition(circuit, paths);
  }

  @Override
  public List<LeakPath> leaks(int member, int test) {
    return List.of(paths.get(member));
  }

  @Override
  public Hold hold(int test) {
    throw new UnsupportedOperationException("no hold is asked for here");
  }

  @Override
  public double gaugeOffset() {
    return 0;
  }

  @Override
  public double readingDeviation() {
    return 600;
  }
}
