package holdcurve.ui.command;

import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.Correction;
import holdcurve.common.input.InputException;
import holdcurve.common.text.Titles;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CaseShelf;
import holdcurve.file.JobReader;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what a case really was. */
@Command(
    name = "correct",
    description = {
      "Says what a case really was, or to which car it belongs. The job file stays as it is.",
      "  holdcurve cases correct my-car.job.json --fault injector-tip"
    },
    mixinStandardHelpOptions = true)
final class CasesCorrectCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(paramLabel = "JOB", description = "The job (*.job.json).")
  private Path file;

  @ArgGroup private Said said;

  @Option(
      names = "--car",
      paramLabel = "NAME",
      description = "Name or number plate that all jobs of this car share.")
  private String car;

  /** One of these. */
  static final class Said {
    @Option(
        names = "--fault",
        paramLabel = "ID",
        description = "It was this fault; 'faults' lists the ids.")
    private String fault;

    @Option(names = "--no-fault", description = "It does not count as a confirmed fault.")
    private boolean none;

    @Option(names = "--as-filed", description = "Take back what was said; the job decides.")
    private boolean asFiled;
  }

  @Override
  public Integer call() {
    String title = Titles.shown(JobReader.readUnfinished(file).title());
    if (said == null && car == null) {
      throw InputException.at(
          "command line",
          "",
          "nothing is said of the case",
          "add --fault, --no-fault, --as-filed or --car");
    }
    FaultCatalogue catalogue = plugins.catalogue();
    if (said != null && said.fault != null) {
      FaultChoice.fault(catalogue, "--fault", said.fault);
    }
    CaseShelf shelf = CaseShelf.usual();
    Path place = file.toAbsolutePath().normalize();
    CaseNotes notes = shelf.notes().with(place, this::corrected);
    shelf.keep(notes);
    PrintWriter out = spec.commandLine().getOut();
    Correction now = notes.corrections().getOrDefault(place, Correction.EMPTY);
    out.println(title + ":");
    out.println(
        "  " + CasesText.said(now, id -> catalogue.byId(id).map(LeakFault::name).orElse(id)));
    if (!now.car().isEmpty()) {
      out.println("  Car: " + now.car() + ".");
    }
    out.flush();
    return 0;
  }

  private Correction corrected(Correction before) {
    Correction after = car == null ? before : before.withCar(car.strip());
    if (said == null) {
      return after;
    }
    return after.withFault(said.fault != null ? said.fault : said.none ? Correction.NONE : "");
  }
}
