package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.physics.network.SimulationException;
import java.util.concurrent.CancellationException;

/** What a person is told of work that ended early, and the exit code that goes with it. */
final class Failures {
  private static final System.Logger LOG = System.getLogger(Failures.class.getName());

  private Failures() {}

  /** Never a stack trace; that of a fault of the program goes to the log. */
  static String sentence(Exception e) {
    if (e instanceof CancellationException) {
      return HoldcurveCommand.STOPPED_SENTENCE;
    }
    if (exitCode(e) != HoldcurveCommand.BROKEN) {
      return e.getMessage();
    }
    LOG.log(System.Logger.Level.DEBUG, "a command broke off", e);
    StackTraceElement[] trace = e.getStackTrace();
    String where = trace.length == 0 ? "" : " in " + trace[0].getClassName();
    return "Holdcurve broke off by a fault of its own; your files are as they were. Please report"
        + " it with the command and its files: "
        + e
        + where
        + ".";
  }

  static int exitCode(Exception e) {
    if (e instanceof InputException) {
      return HoldcurveCommand.BAD_INPUT;
    }
    if (e instanceof CancellationException) {
      return HoldcurveCommand.STOPPED;
    }
    boolean none = e instanceof NoAnswerException || e instanceof SimulationException;
    return none ? HoldcurveCommand.NO_ANSWER : HoldcurveCommand.BROKEN;
  }
}
