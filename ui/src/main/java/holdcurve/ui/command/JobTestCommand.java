package holdcurve.ui.command;

import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.file.JobReader;
import holdcurve.file.StatedEntry;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.JobEdits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds a hold test to a job. */
@Command(
    name = "test",
    description = {
      "Adds a hold test with its log to a job.",
      "  holdcurve job test my-car.job.json log.csv",
      "  holdcurve job test my-car.job.json second.csv --clamp feed-hose"
    },
    mixinStandardHelpOptions = true)
final class JobTestCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private JobArgument job;

  @Parameters(
      index = "1",
      paramLabel = "LOG",
      description = "The readings (*.csv); the file stays where it is.")
  private Path log;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description = "What you call the test (default: after its clamps).")
  private String name;

  @Option(
      names = "--clamp",
      paramLabel = "HOSE",
      description = "This hose was clamped; again for another.")
  private List<String> clamped = new ArrayList<>();

  @Option(
      names = "--clamp-time",
      paramLabel = "S",
      description = "When the clamps went on, in seconds after the pump stop (default: 5).")
  private Double clampTime;

  @Option(
      names = "--prime",
      paramLabel = "S",
      description = "How long the pump had run, in seconds (default: 20).")
  private Double prime;

  @Option(
      names = "--fuel-temp",
      paramLabel = "C",
      description = "Fuel temperature at the pump stop, in degrees Celsius.")
  private Double fuelTemperature;

  @Option(names = "--date", paramLabel = "DATE", description = "When, as 2026-04-11.")
  private String date;

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything to remember.")
  private String note;

  @Override
  public Integer call() {
    return job.locked(this::add);
  }

  private int add() {
    Job before = JobReader.readUnfinished(job.file());
    Circuit circuit = before.circuit();
    String id = name == null ? JobEdits.freeId(before, usualName()) : name;
    StatedEntry test =
        new StatedEntry()
            .put("id", "--name", id)
            .put(
                "clamped",
                "--clamp",
                String.join(" --clamp ", clamped),
                JobArgument.ids(circuit, clamped))
            .put("clamp_time_s", "--clamp-time", clampTime)
            .put("prime_s", "--prime", prime)
            .put("fuel_temp_C", "--fuel-temp", fuelTemperature)
            .put("date", "--date", date)
            .put("notes", "--note", note);
    List<Message> understood = job.edited().addTest(test, log);
    Printout out = new Printout(spec.commandLine().getOut(), job.unit());
    out.println("Added the hold test '" + id + "'.");
    out.wrapped("  ", understood);
    out.println("Next: holdcurve rank " + job.file());
    return 0;
  }

  private String usualName() {
    return clamped.isEmpty()
        ? JobEdits.FIRST_TEST
        : clamped.stream().map(PartName::of).collect(Collectors.joining(" and ")) + " clamped";
  }
}
