package holdcurve.ui.harduse;

import com.sun.management.OperatingSystemMXBean;
import holdcurve.ui.command.HoldcurveCommand;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Work that was told to stop somewhere on its way.
 *
 * @param wasRunning whether there was still something to stop
 * @param code what it ended with
 * @param clockMs from then to its end [ms]
 * @param processorMs what the whole process took of the processors meanwhile [ms]
 * @param where what it did when a fifth of a second had gone by; empty if it had ended
 */
record Interrupted(boolean wasRunning, int code, double clockMs, double processorMs, String where) {
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static final int LOOK_MS = 200;

  /** Stops work after a while, and waits for its end. */
  static Interrupted after(int milliseconds, Runnable work) throws InterruptedException {
    Thread worker = new Thread(work, "interrupted work");
    worker.setDaemon(true);
    worker.start();
    worker.join(1 + milliseconds);
    boolean running = worker.isAlive();
    long clock = System.nanoTime();
    long processor = SYSTEM.getProcessCpuTime();
    worker.interrupt();
    worker.join(LOOK_MS);
    String where =
        Arrays.stream(worker.getStackTrace())
            .limit(25)
            .map(Object::toString)
            .collect(Collectors.joining("\n  "));
    worker.join();
    return new Interrupted(
        running,
        -1,
        (System.nanoTime() - clock) / 1e6,
        (SYSTEM.getProcessCpuTime() - processor) / 1e6,
        where);
  }

  Interrupted withCode(int ended) {
    return new Interrupted(wasRunning, ended, clockMs, processorMs, where);
  }

  /** Whether it was stopped, if there was anything to stop. */
  boolean wasHeeded() {
    return !wasRunning || code == HoldcurveCommand.STOPPED;
  }

  /** The smaller of the two times [ms]. */
  double taken() {
    return Math.min(clockMs, processorMs);
  }
}
