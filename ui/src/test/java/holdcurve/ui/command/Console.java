package holdcurve.ui.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What one command printed, and how it ended. */
record Console(int exitCode, String out, String err) {
  static Console run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        HoldcurveCommand.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
            .execute(args);
    return new Console(code, out.toString(), err.toString());
  }
}
