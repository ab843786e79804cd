package holdcurve.ui.command;

import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.LearnedRates;
import holdcurve.casebook.RatesInUse;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CaseShelf;
import holdcurve.file.RatesFile;
import holdcurve.file.ResultFile;
import holdcurve.inference.prior.FaultPriors;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Fault rates learned from the case book. */
@Command(
    name = "rates",
    description = {
      "Shows how common each fault is, as shipped and by your own confirmed cases.",
      "  holdcurve cases rates --use own",
      "  holdcurve cases rates --export our-rates.json"
    },
    footer = {
      "",
      "A case counts if one repair is noted, it names a fault, and the next hold proved it.",
      "'cases correct' says otherwise. Nothing leaves this machine unless you export it."
    },
    mixinStandardHelpOptions = true)
final class CasesRatesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Option(
      names = "--use",
      paramLabel = "RATES",
      description = "From now on rank with these: own, shipped, or a file that a garage exported.")
  private String use;

  @Option(
      names = "--export",
      paramLabel = "FILE",
      description = "Write your rates to this file, for another garage. It names no car.")
  private Path export;

  @Override
  public Integer call() {
    CaseShelf shelf = CaseShelf.usual();
    CaseNotes notes = shelf.notes();
    if (use != null) {
      notes = notes.withRates(chosen(use));
      shelf.keep(notes);
    }
    FaultCatalogue catalogue = plugins.catalogue();
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    CaseBook book = notes.folders().isEmpty() ? shelf.listed(notes) : shelf.list(notes, progress);
    progress.clear();
    LearnedRates learned = LearnedRates.of(catalogue, FaultPriors.shipped(), book.counts());
    PrintWriter out = spec.commandLine().getOut();
    CasesText.print(learned, shelf.priors(catalogue).rates(), out);
    out.println(used(notes.rates()));
    if (export != null) {
      ResultFile.write(export, RatesFile.json(learned));
      out.println("Written to " + export + ".");
    }
    out.flush();
    return 0;
  }

  private static RatesInUse chosen(String use) {
    return switch (use) {
      case "own" -> RatesInUse.OWN;
      case "shipped" -> RatesInUse.SHIPPED;
      default -> {
        Path file = Path.of(use);
        RatesFile.read(file);
        yield new RatesInUse(RatesInUse.Kind.FILE, Optional.of(file.toAbsolutePath().normalize()));
      }
    };
  }

  private static String used(RatesInUse rates) {
    return switch (rates.kind()) {
      case SHIPPED -> "Rankings use the shipped rates. '--use own' turns yours on.";
      case OWN -> "Rankings use your own rates.";
      case FILE -> "Rankings use the rates in " + rates.file().orElseThrow() + ".";
    };
  }
}
