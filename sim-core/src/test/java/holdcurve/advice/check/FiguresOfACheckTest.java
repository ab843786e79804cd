package holdcurve.advice.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.number.Interval;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Holds;
import holdcurve.record.job.Job;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.PassMark.Outcome;
import holdcurve.record.limit.PassLimit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Numbers that a check rests on. */
class FiguresOfACheckTest {
  private static Ranking ranking(Interval... leaks) {
    List<Suspect> suspects =
        java.util.Arrays.stream(leaks)
            .map(
                leak ->
                    new Suspect(
                        "x" + leak,
                        "",
                        "",
                        0.8 / leaks.length,
                        Optional.of(new FaultSize("", Unit.MILLILITRE_PER_MINUTE, leak)),
                        "",
                        "",
                        List.of()))
            .toList();
    return new Ranking(
        "", 1, new Verdict(Verdict.Kind.OPEN, ""), suspects, List.of(), 2e5, List.of());
  }

  @Test
  void oneLeakIsGivenBack() {
    LeakMixture mixture = LeakMixture.of(ranking(new Interval(1e-9, 2e-9, 4e-9)));
    Interval leak = mixture.leak().orElseThrow();
    assertEquals(0.8, mixture.probability(), 1e-12);
    assertEquals(1e-9, leak.low(), 1e-14);
    assertEquals(2e-9, leak.middle(), 1e-14);
    assertEquals(4e-9, leak.high(), 1e-14);
  }

  /** Two narrow leaks far apart, equally likely: the 5 % quantile is the 10 % one of the lower. */
  @Test
  void twoLeaksAreMixed() {
    double spread = Math.exp(0.1 * 1.6448536269514722);
    Interval leak =
        LeakMixture.of(
                ranking(
                    new Interval(1e-9 / spread, 1e-9, 1e-9 * spread),
                    new Interval(1e-6 / spread, 1e-6, 1e-6 * spread)))
            .leak()
            .orElseThrow();
    assertEquals(1e-9 * Math.exp(-0.1 * 1.2815515655446004), leak.low(), 1e-13);
    assertEquals(1e-6 * Math.exp(0.1 * 1.2815515655446004), leak.high(), 1e-10);
  }

  @Test
  void aHoldIsSetBesideItsLimit() {
    PassLimit limit = PassLimit.usual(2e5);
    assertEquals(1.7e5, limit.pressure(), 1e-6);
    GaugeSpec gauge = GaugeSpec.usual();
    assertEquals(Outcome.PASSES, outcome(limit, gauge, 2, 1.9, 1.85, 1.8, 1.75, 1.7));
    assertEquals(Outcome.WITHIN_GAUGE_ERROR, outcome(limit, gauge, 2, 1.9, 1.8, 1.7, 1.7, 1.66));
    assertEquals(Outcome.FAILS, outcome(limit, gauge, 2, 1.9, 1.8, 1.7, 1.65, 1.6));
    assertEquals(Outcome.TOO_SHORT, outcome(limit, gauge, 2, 1.9, 1.8, 1.8));
    assertEquals(1.875e5, PassMark.at(Holds.hold("a", "", 2, 1.9, 1.8).log().hold(), 75), 1);
  }

  private static Outcome outcome(PassLimit limit, GaugeSpec gauge, double... bar) {
    return PassMark.of(Holds.hold("a", "", bar), limit, gauge).outcome();
  }

  /**
   * A sound circuit by description alone: it starts near the set pressure, falls, and the range
   * opens with time.
   */
  @Test
  void aSoundCircuitIsExpectedToFallALittle() {
    HoldTest test =
        Holds.hold("a", "", 2, 1.95, 1.9, 1.88, 1.86, 1.84, 1.82, 1.8, 1.78, 1.76, 1.75);
    Job job = Holds.job(List.of(), List.of(test));
    List<PosteriorDraw> ways = PosteriorDraw.before(job.circuit(), job.gauge(), 1, 60);
    HoldCurve curve = ExpectedHold.of(ways, test, 1);
    int last = curve.time().length - 1;
    assertEquals(600, curve.time()[last], 1e-9);
    assertEquals(2e5, curve.middle()[0], 0.1e5);
    assertTrue(curve.middle()[last] > 1.2e5 && curve.middle()[last] < 1.9e5);
    assertTrue(curve.high()[last] - curve.low()[last] > curve.high()[0] - curve.low()[0]);
    assertArrayEquals(curve.low(), ExpectedHold.of(ways, test, 1).low());
  }
}
