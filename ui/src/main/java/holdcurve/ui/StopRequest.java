package holdcurve.ui;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C in a terminal: the work is told to stop, and whoever waits is told that it did. The
 * process ends with exit code 130, as shells have it, whether or not the work comes to an end.
 */
final class StopRequest {
  private static final int PATIENCE_MS = 200;

  private final Thread work = Thread.currentThread();
  private final CountDownLatch ended = new CountDownLatch(1);
  private final PrintWriter err;

  private StopRequest(PrintWriter err) {
    this.err = err;
  }

  /** Heeds Ctrl-C from now on, for what the calling thread does. */
  static StopRequest heeded(PrintWriter err) {
    StopRequest request = new StopRequest(err);
    Runtime.getRuntime().addShutdownHook(new Thread(request::stop, "stop"));
    return request;
  }

  /** The work has said what it had to say. */
  void workEnded() {
    ended.countDown();
  }

  private void stop() {
    work.interrupt();
    try {
      if (!ended.await(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
        err.println(HoldcurveCommand.STOPPED_SENTENCE);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
