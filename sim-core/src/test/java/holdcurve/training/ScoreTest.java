package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScoreTest {
  private static final List<String> ANSWERS = List.of("none", "a", "b", "c");
  private static final StatedOdds EVEN = StatedOdds.even(ANSWERS);

  private static double certainty(StatedOdds belief, String right) {
    return Score.of(belief, Set.of(right), EVEN, 0).certainty();
  }

  @Test
  void sureAndRightIsAHundredAndNoIdeaIsNothing() {
    assertEquals(100, certainty(StatedOdds.of(ANSWERS, Map.of("a", 1.0)), "a"), 1e-9);
    assertEquals(0, certainty(EVEN, "a"), 1e-9);
    assertTrue(certainty(StatedOdds.of(ANSWERS, Map.of("b", 1.0)), "a") < -100);
  }

  /** Brier's own score of a forecast of 0.7, 0.1, 0.1, 0.1: 0.09 + 3 · 0.01 = 0.12. */
  @Test
  void isBriersScoreOverThatOfAnEvenSpread() {
    double even = 0.75 * 0.75 + 3 * 0.25 * 0.25;
    assertEquals(
        100 * (1 - 0.12 / even), certainty(StatedOdds.of(ANSWERS, Map.of("a", 0.7)), "a"), 1e-9);
  }

  /** What makes a rule proper (Gneiting and Raftery, J. Am. Stat. Assoc. 102 (2007) 359). */
  @Property(tries = 200)
  void nobodyGainsByOverstating(
      @ForAll @DoubleRange(min = 0, max = 1) double thought,
      @ForAll @DoubleRange(min = 0, max = 1) double said) {
    assertTrue(expected(thought, said) <= expected(thought, thought) + 1e-9);
  }

  /** Expected points of one who thinks it is a, else b, and says something else. */
  private static double expected(double thought, double said) {
    StatedOdds belief = StatedOdds.of(ANSWERS, Map.of("a", said, "b", 1 - said));
    return thought * certainty(belief, "a") + (1 - thought) * certainty(belief, "b");
  }

  @Test
  void answersThatNoStepTellsApartCountAsOne() {
    StatedOdds torn = StatedOdds.of(ANSWERS, Map.of("a", 0.5, "b", 0.5));
    assertEquals(100, Score.of(torn, Set.of("a", "b"), EVEN, 0).certainty(), 1e-9);
  }

  @Test
  void timeCostsAFifthAndNoTotalIsBelowNothing() {
    StatedOdds sure = StatedOdds.of(ANSWERS, Map.of("a", 1.0));
    assertEquals(90, Score.of(sure, Set.of("a"), EVEN, 0.5).total(), 1e-9);
    assertEquals(0, Score.of(sure, Set.of("b"), EVEN, 0.5).total());
  }

  @Test
  void certaintiesMustAddUp() {
    assertEquals(0.2, StatedOdds.of(ANSWERS, Map.of("a", 0.4)).shares().get("b"), 1e-12);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> StatedOdds.of(ANSWERS, Map.of("a", 0.7, "b", 0.6)))
            .getMessage();
    assertTrue(message.contains("add up to 130 %"), message);
  }

  /** From one in four to certainty: two bits. */
  @Test
  void learningIsCountedInBits() {
    assertEquals(2, StatedOdds.of(ANSWERS, Map.of("a", 1.0)).gainedOver(EVEN), 1e-12);
    assertEquals(0, EVEN.gainedOver(EVEN), 1e-12);
  }
}
