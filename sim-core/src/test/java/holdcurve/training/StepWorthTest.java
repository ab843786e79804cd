package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StepWorthTest {
  private static final Step HOLD = new Step.Hold(List.of(), 10);
  private static final Step CLAMPED = new Step.Hold(List.of("feed-hose"), 10);
  private static final Step LOOK = new Step.LookAtJoints();
  private static final List<Step> ALL = List.of(HOLD, CLAMPED, LOOK);

  private static Evidence evidence(double look, double clamped, double hold) {
    return new Evidence(
        new StatedOdds(Map.of("none", 1.0)),
        "",
        List.of(
            new Evidence.Worth(LOOK, look),
            new Evidence.Worth(CLAMPED, clamped),
            new Evidence.Worth(HOLD, hold)),
        true);
  }

  /** Whatever each is expected to tell: what the plan puts first is the best choice. */
  @Property(tries = 100)
  void whatThePlanPutsFirstIsNeverCalledUseless(
      @ForAll @DoubleRange(min = 0, max = 3) double look,
      @ForAll @DoubleRange(min = 0, max = 3) double clamped) {
    StepWorth worth = StepWorth.of(LOOK, ALL, evidence(look, clamped, 0.05));
    assertEquals(StepWorth.Kind.BEST, worth.kind());
    assertTrue(worth.better().isEmpty());
  }

  @Test
  void whatTellsLessForItsTimeIsToldWhatWouldHaveToldMore() {
    StepWorth worth = StepWorth.of(HOLD, ALL, evidence(1, 1, 0.05));
    assertEquals(StepWorth.Kind.POOR, worth.kind());
    assertEquals(LOOK, worth.better().orElseThrow());
    assertEquals(0.05 / 13 / (1.0 / 6), worth.value(), 1e-9);
  }

  @Test
  void onceEnoughIsKnownAnotherTestIsNeedless() {
    StepWorth worth = StepWorth.of(HOLD, ALL, evidence(0.04, 0.02, 0.05));
    assertEquals(StepWorth.Kind.NEEDLESS, worth.kind());
    assertTrue(worth.better().isEmpty());
  }

  @Test
  void whatThereWasNoTimeForIsNoBetterChoice() {
    StepWorth worth = StepWorth.of(HOLD, List.of(HOLD), evidence(1, 1, 0.2));
    assertEquals(StepWorth.Kind.BEST, worth.kind());
  }

  @Test
  void aHoldIsTheRightBeginning() {
    Evidence nothing = new Evidence(new StatedOdds(Map.of("none", 1.0)), "", List.of(), true);
    assertEquals(StepWorth.Kind.BEST, StepWorth.of(HOLD, ALL, nothing).kind());
    assertEquals(HOLD, StepWorth.of(LOOK, ALL, nothing).better().orElseThrow());
  }
}
