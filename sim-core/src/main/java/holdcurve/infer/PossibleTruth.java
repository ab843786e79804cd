package holdcurve.infer;

import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.hold.Hold;
import holdcurve.job.HoldTest;
import holdcurve.log.GaugeLog;
import holdcurve.side.Truth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** A possibility, for side evidence that is still to come: all tests count as one. */
final class PossibleTruth implements Truth {
  private final Possibility possibility;
  private final List<Member> members;
  private final Map<Integer, List<LeakPath>> leaks = new HashMap<>();
  private Condition sound;
  private Condition condition;

  PossibleTruth(Possibility possibility) {
    this.possibility = possibility;
    this.members =
        possibility.hypothesis().members().stream()
            .map(m -> new Member(m.fault(), m.site()))
            .toList();
  }

  @Override
  public List<Member> members() {
    return members;
  }

  @Override
  public Condition sound() {
    if (sound == null) {
      sound = possibility.condition(UnaryOperator.identity(), m -> false);
    }
    return sound;
  }

  @Override
  public Condition condition(int test) {
    if (condition == null) {
      condition = possibility.condition();
    }
    return condition;
  }

  @Override
  public List<LeakPath> leaks(int member, int test) {
    Hypothesis.Member one = possibility.hypothesis().members().get(member);
    return leaks.computeIfAbsent(
        member, key -> possibility.condition(UnaryOperator.identity(), m -> m.equals(one)).leaks());
  }

  @Override
  public Hold hold(int test) {
    HoldTest plain = HoldTest.of("hold", Set.of(), new GaugeLog("none", List.of(), 0));
    return possibility.hold(UnaryOperator.identity(), plain, m -> true, null);
  }

  @Override
  public double gaugeOffset() {
    return possibility.scatter().offset();
  }

  @Override
  public double readingDeviation() {
    return possibility.scatter().deviation();
  }
}
