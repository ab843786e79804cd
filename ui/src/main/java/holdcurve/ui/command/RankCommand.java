package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.file.RankingTable;
import holdcurve.file.RankingWriter;
import holdcurve.file.ResultFile;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.BeforeRepair;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Ranks the likely leak sources of a job. */
@Command(
    name = "rank",
    description = {
      "Ranks the likely leak sources of a job, or of one log with the circuit it was read on.",
      "  holdcurve rank my-car.job.json",
      "  holdcurve rank --full --explain my-car.job.json",
      "  holdcurve rank --circuit my-car.circuit.json log.csv"
    },
    mixinStandardHelpOptions = true)
final class RankCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Mixin private Rates rates;

  @Parameters(
      paramLabel = "FILE",
      description = "A job (*.job.json), or with --circuit a gauge log.")
  private Path file;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "The circuit (*.circuit.json) that the log was read on.")
  private Path circuit;

  @Option(
      names = "--explain",
      description = "Also say what in the readings is for and against the likeliest suspects.")
  private boolean explain;

  @Option(
      names = "--full",
      description = "Also list every suspect, where the fall went and what was assumed.")
  private boolean full;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Also write the figures of the result as CSV to this file.")
  private Path csv;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  /** The file as a job; a log alone is none. */
  private Path job() {
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(".csv") && Files.isRegularFile(file)) {
      throw InputException.at(
          file.toString(),
          "",
          "a log alone can't be ranked",
          "name the circuit it was read on too, with --circuit, or put both into a job");
    }
    return file;
  }

  private PressureUnit unit() {
    return circuit == null ? units.ofJob(job()) : units.ofLog(file);
  }

  @Override
  public Integer call() {
    Job whole = circuit == null ? JobReader.read(job()) : JobReader.of(circuit, file);
    Job job = CurrentTests.of(whole);
    Printout out = new Printout(spec.commandLine().getOut(), unit());
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    FaultCatalogue catalogue = plugins.catalogue();
    RankingService service = rates.service(catalogue, file, whole, progress);
    boolean all = full || csv != null || output.isAsked();
    Ranking ranking = (all ? service : service.verdictOnly()).rank(job, output.seed, progress);
    progress.clear();
    RankingText.print(ranking, job, BeforeRepair.words(whole), full, explain, out);
    out.flush();
    if (csv != null) {
      ResultFile.write(csv, RankingTable.csv(ranking));
    }
    output.write(() -> RankingWriter.json(ranking));
    return switch (ranking.verdict().kind()) {
      case OPEN, UNEXPLAINED -> HoldcurveCommand.NO_ANSWER;
      case LEAK, FAULT, SOUND -> 0;
    };
  }
}
