package holdcurve.ui.harduse;

import holdcurve.ui.command.HoldcurveCommand;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Gives every command in a process of its own while the Java machine keeps a record of all that is
 * written, to files and to sockets. Prints that record.
 */
final class EveryCommand {
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
    WriteRecord record = WriteRecord.start();
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
    run("report-problem " + job + " --out " + out + "problem.zip");
    run("cases " + in + " --csv " + out + "cases.csv");
    run("about");
    record.print(Path.of(arguments[2]), Path.of(out + "control.txt"));
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
}
