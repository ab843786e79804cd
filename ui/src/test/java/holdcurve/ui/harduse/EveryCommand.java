package holdcurve.ui.harduse;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;

/**
 * Gives every command in a process of its own while the Java machine keeps a record of all that is
 * written, to files and to sockets. Prints that record.
 */
final class EveryCommand {
  private static final List<String> WATCHED =
      List.of("jdk.FileWrite", "jdk.SocketWrite", "jdk.SocketRead");

  private EveryCommand() {}

  /**
   * @param arguments folder with the scenarios, folder that is chosen for results, a file for the
   *     record
   */
  public static void main(String[] arguments) throws IOException {
    String in = arguments[0] + "/";
    String out = arguments[1] + "/";
    String circuit = in + "circuits/six-cylinder-return-line.circuit.json";
    String job = in + "check-valve.job.json";
    try (Recording recording = new Recording()) {
      WATCHED.forEach(event -> recording.enable(event).withoutThreshold().withoutStackTrace());
      recording.start();
      run("rank " + job + " --json " + out + "rank.json");
      run("plan " + job + " --json " + out + "plan.json");
      run("whatif " + job + " --replace check-valve --json " + out + "whatif.json");
      run("check " + in + "repaired-check-valve.job.json --json " + out + "check.json");
      run("refit " + in + "rail-loss.job.json --tick " + step(in) + " --by AB");
      run("report " + job + " --out " + out);
      run("simulate " + circuit + " --log " + out + "simulated.csv");
      run("faults --circuit " + circuit + " --json " + out + "faults.json");
      run("bench-sheet " + in + "bench/six-as-they-came.bench.json --csv " + out + "bench.csv");
      run("drop-test " + in + "bench/drops-six-times.csv --json " + out + "drops.json");
      run(
          "practise --lapse 0 --results "
              + out
              + "scores.csv "
              + in
              + "exercises/thin-hose.exercise.json");
      run("practise --circuit " + circuit + " --make 2 --out " + out);
      seenIfThereWereAny(out + "control.txt");
      recording.stop();
      recording.dump(Path.of(arguments[2]));
    }
    RecordingFile.readAllEvents(Path.of(arguments[2])).forEach(EveryCommand::print);
  }

  private static String step(String in) {
    return holdcurve.file.JobReader.read(Path.of(in + "rail-loss.job.json"))
        .upkeep()
        .refit()
        .steps()
        .get(0)
        .id();
  }

  private static void run(String words) {
    System.setIn(new ByteArrayInputStream("1\n\na\n1=90\n".getBytes(StandardCharsets.US_ASCII)));
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said);
    int code = HoldcurveCommand.commandLine(writer, writer).execute(words.split(" "));
    System.out.println(code + " " + words.replaceAll("\\S*/", "") + (code == 0 ? "" : "\n" + said));
  }

  /** A record that misses these would prove nothing. */
  private static void seenIfThereWereAny(String file) throws IOException {
    Files.writeString(Path.of(file), "control");
    try (ServerSocket here = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Socket there = new Socket(here.getInetAddress(), here.getLocalPort())) {
      there.getOutputStream().write(1);
    }
  }

  private static void print(RecordedEvent event) {
    String name = event.getEventType().getName();
    if (!name.equals("jdk.FileWrite")) {
      System.out.println(name + " " + event.getString("host"));
    } else if (event.getString("path") != null) {
      System.out.println(name + " " + event.getString("path"));
    }
  }
}
