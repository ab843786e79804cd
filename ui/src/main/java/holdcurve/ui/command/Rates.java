package holdcurve.ui.command;

import holdcurve.casebook.SameCar;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CaseShelf;
import holdcurve.file.RatesFile;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which fault rates a ranking starts from, and whether earlier jobs of the car teach it. */
final class Rates {
  @ArgGroup private Choice choice;

  /** One of these. */
  static final class Choice {
    @Option(
        names = "--own-rates",
        paramLabel = "FILE",
        description =
            "Use the fault rates in this file, as 'cases rates --export' writes it. Without it, what"
                + " 'cases rates --use' chose.")
    private Path file;

    @Option(names = "--shipped-rates", description = "Use the fault rates that are shipped.")
    private boolean shipped;
  }

  @Option(
      names = "--alone",
      description = "Do not start from what earlier jobs of the same car taught.")
  private boolean alone;

  /**
   * Ranks by the chosen rates, and from what earlier jobs of the same car taught.
   *
   * @param file of the job
   */
  RankingService service(FaultCatalogue catalogue, Path file, Job job, Progress progress) {
    List<Job> earlier = alone ? List.of() : CaseShelf.usual().earlier(file);
    return SameCar.ranking(
        new RankingService(catalogue, priors(catalogue)), earlier, job, progress);
  }

  private FaultPriors priors(FaultCatalogue catalogue) {
    if (choice == null) {
      return CaseShelf.usual().priors(catalogue);
    }
    return choice.shipped
        ? FaultPriors.shipped()
        : FaultPriors.shipped().withRates(RatesFile.read(choice.file));
  }
}
