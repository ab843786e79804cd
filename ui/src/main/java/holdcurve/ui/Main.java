package holdcurve.ui;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;

/** Starts Holdcurve: a command, or the window when there is none. */
public final class Main {
  private Main() {}

  /** Exits with the command's exit code. */
  public static void main(String[] args) {
    PrintWriter err = writer(System.err);
    Preloading.begin(args);
    StopRequest request = StopRequest.heeded(err);
    int code = run(args, writer(System.out), err);
    request.workEnded();
    System.exit(code);
  }

  static int run(String[] args, PrintWriter out, PrintWriter err) {
    return HoldcurveCommand.execute(out, err, args);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, Charset.defaultCharset()), true);
  }
}
