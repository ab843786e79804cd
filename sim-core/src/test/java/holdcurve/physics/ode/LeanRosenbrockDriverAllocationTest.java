package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class LeanRosenbrockDriverAllocationTest {

  /** 300 steps and 2000 calls of f; any object per step would pass the limit many times over. */
  @Test
  void aRunAllocatesNothingButItsStatistics() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(
            RosenbrockMethod.RODAS4.tableau(), Tolerances.relative(1e-8, HoldBenchmark.FLOOR));
    HoldBenchmark equations = new HoldBenchmark(false);
    double[][] rows = new double[HoldBenchmark.TIMES.length][9];
    double[] y = HoldBenchmark.initial("A");
    driver.integrate(equations, 0, y, 1800, HoldBenchmark.TIMES, rows);
    double[] again = HoldBenchmark.initial("A");
    long before = threads.getCurrentThreadAllocatedBytes();
    driver.integrate(equations, 0, again, 1800, HoldBenchmark.TIMES, rows);
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    assertTrue(bytes < 2000, bytes + " bytes allocated");
  }
}
