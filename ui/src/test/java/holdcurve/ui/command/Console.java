package holdcurve.ui.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What one command printed, and how it ended. */
record Console(int exitCode, String out, String err) {
  static Console run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        HoldcurveCommand.execute(new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Console(code, out.toString(), err.toString());
  }
}
