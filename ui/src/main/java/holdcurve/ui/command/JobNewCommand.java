package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.text.Titles;
import holdcurve.file.JobFile;
import holdcurve.file.StatedEntry;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a job. */
@Command(
    name = "new",
    description = {
      "Begins a job on a circuit file, or on what little you know of the circuit.",
      "  holdcurve job new my-car.job.json --circuit my-car.circuit.json",
      "  holdcurve job new my-car.job.json --cylinders 4 --pipe-length 3 --set 2bar"
    },
    mixinStandardHelpOptions = true)
final class JobNewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "The new job; its name ends in .job.json.")
  private Path file;

  @Option(
      names = "--title",
      paramLabel = "TEXT",
      description = "What you call the job (default: the name of its file).")
  private String title;

  @ArgGroup private Subject subject;

  @Mixin private GaugeOptions gauge;

  @Mixin private Units units;

  /** What the job is about. */
  static final class Subject {
    @Option(
        names = "--circuit",
        paramLabel = "CIRCUIT",
        description = "A circuit that is described already (*.circuit.json).")
    private Path circuit;

    @ArgGroup(exclusive = false)
    private Outline outline;
  }

  /** A circuit in a few words. */
  static final class Outline {
    @Option(names = "--cylinders", paramLabel = "N", required = true, description = "How many.")
    private int cylinders;

    @Option(
        names = "--pipe-length",
        paramLabel = "M",
        description = "Metres of pipe from tank to engine (default: usual, as a guess).")
    private Double pipeLength;

    @Option(
        names = "--pipe-bore",
        paramLabel = "MM",
        description = "Its inner diameter in millimetres (default: usual, as a guess).")
    private Double pipeBore;

    @Option(
        names = "--set",
        paramLabel = "P",
        converter = StatedPressure.Typed.class,
        description = "Set pressure of the regulator (default: usual, as a guess).")
    private StatedPressure set;

    @Option(names = "--damper", description = "A pulsation damper sits on the rail.")
    private boolean damper;

    @Option(names = "--cold-start", description = "A cold-start injector sits on the rail.")
    private boolean coldStart;

    private StatedEntry stated(PressureUnit unit) {
      StatedEntry outline =
          new StatedEntry()
              .put("cylinders", "--cylinders", cylinders)
              .put("pipe_length_m", "--pipe-length", pipeLength)
              .put("pipe_bore_mm", "--pipe-bore", pipeBore)
              .put("damper", "--damper", damper ? true : null)
              .put("cold_start_injector", "--cold-start", coldStart ? true : null);
      return set == null ? outline : outline.put("set_bar", "--set", set.typed(), set.bar(unit));
    }
  }

  @Override
  public Integer call() {
    if (subject == null) {
      throw InputException.at(
          "command line",
          "",
          "no circuit is named",
          "add --circuit and its file, or --cylinders and their number");
    }
    PressureUnit unit = units.unit();
    StatedEntry entries = new StatedEntry().put("title", "--title", title());
    gauge.state(entries, unit);
    JobFile begun = JobFile.at(file);
    Job job =
        subject.circuit == null
            ? begun.beginOutline(entries, subject.outline.stated(unit))
            : begun.begin(entries, subject.circuit);
    Printout out = new Printout(spec.commandLine().getOut(), unit);
    out.println("Begun: " + Titles.shown(job.title()));
    double set = job.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    out.wrapped("", Message.of("The regulator is set to %s.", Message.pressure(set)));
    out.println("Next: holdcurve job test " + file + " LOG.csv");
    return 0;
  }

  private String title() {
    if (title != null) {
      return title;
    }
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString().replaceFirst("\\.job\\.json$", "");
  }
}
