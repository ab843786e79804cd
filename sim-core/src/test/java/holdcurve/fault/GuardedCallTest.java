package holdcurve.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** As on a Java on which a thread can't be stopped. */
class GuardedCallTest {
  private final CountDownLatch inside = new CountDownLatch(1);
  private final GuardedCall visit =
      new GuardedCall(Thread.currentThread(), GuardedCallTest::refuse);

  private static void refuse(Thread thread) {
    throw new UnsupportedOperationException();
  }

  private double sleep(double argument) {
    inside.countDown();
    try {
      Thread.sleep(600_000);
    } catch (InterruptedException e) {
      return argument;
    }
    return Double.NaN;
  }

  private void endOnceInside() {
    try {
      inside.await();
    } catch (InterruptedException e) {
      return;
    }
    visit.looksUnchanged();
    visit.end();
  }

  @Test
  void aCallThatSleepsIsInterruptedAndTheNextIsHeard() {
    new Thread(this::endOnceInside).start();
    assertThrows(CutOffException.class, () -> visit.ask(this::sleep, 1));
    assertFalse(Thread.interrupted(), "that was for the plugin alone");
    assertEquals(2, visit.ask(x -> 2 * x, 1));
  }
}
