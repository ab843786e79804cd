package holdcurve.ui;

import holdcurve.fault.LeakFault;
import holdcurve.inference.prior.FaultPriors;
import java.io.IOException;
import java.util.Collections;

/**
 * Opens the jars and warms up the JSON reader while the command line is still being read: one
 * thread alone leaves the second core with nothing to do for a third of a second.
 */
final class Preloading {
  private Preloading() {}

  /** Begins, unless the arguments ask for the window, which has a pace of its own. */
  static void begin(String[] arguments) {
    if (arguments.length > 0 && !arguments[0].equals("window")) {
      Thread thread = new Thread(Preloading::run, "head start");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private static void run() {
    try {
      FaultPriors.shipped();
      Collections.list(
          Preloading.class
              .getClassLoader()
              .getResources("META-INF/services/" + LeakFault.class.getName()));
    } catch (IOException | RuntimeException e) {
      // the command meets the same and says so
    }
  }
}
