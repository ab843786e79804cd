package holdcurve.bench.droptest;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** How often an injector is said not to shut, by sets drawn with a gauge that is read by eye. */
class AfterFallTest {
  private static final double STEP = 5e3;
  private static final double WATCH = 60;
  private static final int SETS = 4000;

  /** Fall of a circuit that leaks a little, the same whether fired or not [Pa/s]. */
  private static final double IDLE = 5e3 / 60;

  private final Well19937c random = new Well19937c(11);

  private double read(double pressure) {
    return STEP * Math.rint((pressure + 0.3 * STEP * random.nextGaussian()) / STEP);
  }

  /**
   * @param excess fall after injector 3 beyond that of the others, in 60 s [Pa]
   */
  private DropTest set(double excess) {
    List<Firing> firings = new ArrayList<>();
    for (int round = 0; round < 4; round++) {
      for (int i = 1; i <= 6; i++) {
        double before = 2e5 + 1e4 * (random.nextDouble() - 0.5);
        double after = before - 0.65e5;
        double later = after - IDLE * WATCH - (i == 3 ? excess : 0);
        double seen = read(after);
        firings.add(
            new Firing(
                Integer.toString(i),
                read(before),
                seen,
                OptionalDouble.of(Math.min(seen, read(later)))));
      }
    }
    List<IdleFall> idle = new ArrayList<>();
    for (int round = 0; round < 4; round++) {
      double before = 2e5 + 1e4 * (random.nextDouble() - 0.5);
      idle.add(new IdleFall(read(before), read(before - IDLE * 60), 60));
    }
    Shot shot = new Shot(1, 0.25, 8);
    return new DropTest("drawn", STEP, shot, WATCH, firings, idle, Optional.empty(), List.of());
  }

  private double shareSaid(double excess) {
    int said = 0;
    for (int k = 0; k < SETS; k++) {
      DropTest test = set(excess);
      said += test.injectors().stream().anyMatch(id -> AfterFall.staysOpen(test, id)) ? 1 : 0;
    }
    return said / (double) SETS;
  }

  /** The ranking reckons with one sound set in two hundred. */
  @Test
  void soundSetsAreSeldomAccused() {
    double share = shareSaid(0);
    assertTrue(share < 0.005, share + " of sound sets");
  }

  @Test
  void aFallOfThreeStepsMoreIsFound() {
    double share = shareSaid(3 * STEP);
    assertTrue(share > 0.9, share + " of sets with one that doesn't shut");
  }

  @Test
  void withoutAnIdleLineNothingIsSaid() {
    DropTest test = set(5 * STEP);
    DropTest blind =
        new DropTest(
            "drawn",
            STEP,
            test.shot(),
            WATCH,
            test.firings(),
            List.of(),
            Optional.empty(),
            List.of());
    assertTrue(AfterFall.staysOpen(test, "3"));
    assertFalse(AfterFall.staysOpen(blind, "3"));
  }
}
