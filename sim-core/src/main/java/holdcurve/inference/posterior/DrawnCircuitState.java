package holdcurve.inference.posterior;

import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.hold.Hold;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** A possibility, for side evidence that is still to come: all tests count as one. */
final class DrawnCircuitState implements CircuitState {
  private final PosteriorDraw posteriorDraw;
  private final List<Member> members;
  private final Map<Integer, List<LeakPath>> leaks = new HashMap<>();
  private Condition sound;
  private Condition condition;

  DrawnCircuitState(PosteriorDraw posteriorDraw) {
    this.posteriorDraw = posteriorDraw;
    this.members =
        posteriorDraw.hypothesis().members().stream()
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
      sound = posteriorDraw.condition(UnaryOperator.identity(), m -> false);
    }
    return sound;
  }

  @Override
  public Condition condition(int test) {
    if (condition == null) {
      condition = posteriorDraw.condition();
    }
    return condition;
  }

  @Override
  public List<LeakPath> leaks(int member, int test) {
    Hypothesis.Member one = posteriorDraw.hypothesis().members().get(member);
    return leaks.computeIfAbsent(
        member,
        key -> posteriorDraw.condition(UnaryOperator.identity(), m -> m.equals(one)).leaks());
  }

  @Override
  public Hold hold(int test) {
    HoldTest plain = HoldTest.of("hold", Set.of(), new GaugeLog("none", List.of(), 0));
    return posteriorDraw.hold(UnaryOperator.identity(), plain, m -> true, null);
  }

  @Override
  public double gaugeOffset() {
    return posteriorDraw.scatter().offset();
  }

  @Override
  public double readingDeviation() {
    return posteriorDraw.scatter().deviation();
  }
}
