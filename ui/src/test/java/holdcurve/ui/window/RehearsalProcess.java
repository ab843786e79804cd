package holdcurve.ui.window;

import holdcurve.fault.FaultCatalogue;
import holdcurve.ui.window.frame.Desk;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * Shows a window in a process that has loaded nothing yet, rehearses it, and prints a line for each
 * step: processor time of the screen's thread [ms], time by the clock [ms].
 */
final class RehearsalProcess {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private RehearsalProcess() {}

  public static void main(String[] arguments) throws InterruptedException {
    CountDownLatch shown = new CountDownLatch(1);
    CountDownLatch rehearsed = new CountDownLatch(1);
    Platform.startup(() -> show(shown, rehearsed));
    shown.await();
    rehearsed.await();
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }

  private static void show(CountDownLatch shown, CountDownLatch rehearsed) {
    Stage stage = new Stage();
    Desk desk = WorkingDesk.of(FaultCatalogue::load, near -> Optional.empty(), Runnable::run);
    Rehearsal rehearsal = HoldcurveWindow.fill(stage, desk);
    stage.show();
    shown.countDown();
    Platform.runLater(() -> rehearsal.run(RehearsalProcess::timed, rehearsed::countDown));
  }

  private static void timed(Runnable step) {
    long clock = System.nanoTime();
    long work = THREADS.getCurrentThreadCpuTime();
    step.run();
    System.out.printf(
        Locale.ROOT,
        "%.1f %.1f%n",
        (THREADS.getCurrentThreadCpuTime() - work) / 1e6,
        (System.nanoTime() - clock) / 1e6);
  }
}
