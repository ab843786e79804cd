package holdcurve.ui.command;

import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CaseShelf;
import holdcurve.file.RatesFile;
import holdcurve.inference.prior.FaultPriors;
import java.nio.file.Path;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which fault rates a ranking starts from. */
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

  FaultPriors priors(FaultCatalogue catalogue) {
    if (choice == null) {
      return CaseShelf.usual().priors(catalogue);
    }
    return choice.shipped
        ? FaultPriors.shipped()
        : FaultPriors.shipped().withRates(RatesFile.read(choice.file));
  }
}
