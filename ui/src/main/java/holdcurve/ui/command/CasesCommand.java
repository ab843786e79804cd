package holdcurve.ui.command;

import holdcurve.casebook.CaseAnswers;
import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.CaseSelection;
import holdcurve.casebook.JobState;
import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CaseShelf;
import holdcurve.file.CaseTable;
import holdcurve.file.JobReader;
import holdcurve.file.ResultFile;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.network.SimulationException;
import holdcurve.record.job.Job;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the jobs in folders: the case book. */
@Command(
    name = "cases",
    description = {
      "Lists the jobs in folders, and learns from proven repairs which faults are common.",
      "Jobs are only read. What the case book keeps lies in your home folder.",
      "  holdcurve cases jobs --keep",
      "  holdcurve cases --search valve --state leaking",
      "  holdcurve cases rates"
    },
    subcommands = {CasesCorrectCommand.class, CasesRatesCommand.class},
    mixinStandardHelpOptions = true)
final class CasesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Parameters(
      arity = "0..*",
      paramLabel = "FOLDER",
      description = "Folders with jobs, at any depth (default: those kept).")
  private List<Path> folders = new ArrayList<>();

  @Option(names = "--keep", description = "Keep these folders as those of the case book.")
  private boolean keep;

  @Option(
      names = "--search",
      paramLabel = "WORDS",
      description = "Only cases in which all these words stand: car, verdict, repair or file.")
  private String search = "";

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "Only jobs that are so far: ${COMPLETION-CANDIDATES}.")
  private JobState state;

  @Option(
      names = "--sort",
      paramLabel = "ORDER",
      description = "By ${COMPLETION-CANDIDATES} (default: the latest first).")
  private CaseSelection.Order order = CaseSelection.Order.DATE;

  @Option(
      names = "--rank",
      description = "Also rank or check the listed jobs without a verdict: some seconds each.")
  private boolean rank;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Also write the listed cases as CSV to this file.")
  private Path csv;

  @Mixin private Output output;

  @Override
  public Integer call() {
    CaseShelf shelf = CaseShelf.usual();
    CaseNotes notes = notes(shelf);
    PrintWriter out = spec.commandLine().getOut();
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    CaseBook book = shelf.list(notes, progress);
    CaseSelection selection = new CaseSelection(search, Optional.ofNullable(state), order);
    List<String> failed = new ArrayList<>();
    if (rank) {
      rank(selection.of(book), shelf, progress, failed);
      book = shelf.list(notes, progress);
    }
    progress.clear();
    List<CaseEntry> shown = selection.of(book);
    CasesText.print(book, shown, this::name, out);
    failed.forEach(one -> Wrapped.print(out, "  - ", one));
    out.flush();
    CaseBook listed = book;
    if (csv != null) {
      ResultFile.write(csv, CaseTable.csv(listed, shown));
    }
    output.write(() -> CaseTable.json(listed, shown));
    return 0;
  }

  private String name(String fault) {
    return plugins.catalogue().byId(fault).map(LeakFault::name).orElse(fault);
  }

  private CaseNotes notes(CaseShelf shelf) {
    for (Path folder : folders) {
      if (!Files.isDirectory(folder)) {
        throw InputException.at(
            folder.toString(),
            "",
            Files.exists(folder) ? "this is no folder" : "there is no such file or folder",
            "name a folder with jobs in it");
      }
    }
    CaseNotes kept = shelf.notes();
    if (folders.isEmpty()) {
      if (kept.folders().isEmpty()) {
        throw InputException.at(
            "command line",
            "",
            "the case book has no folder yet",
            "name one, and add --keep to keep it");
      }
      return kept;
    }
    CaseNotes named =
        kept.withFolders(folders.stream().map(f -> f.toAbsolutePath().normalize()).toList());
    if (keep) {
      shelf.keep(named);
    }
    return named;
  }

  private void rank(
      List<CaseEntry> shown, CaseShelf shelf, ProgressLine line, List<String> failed) {
    FaultCatalogue catalogue = plugins.catalogue();
    CaseAnswers answers =
        new CaseAnswers(new RankingService(catalogue, shelf.priors(catalogue)), catalogue);
    List<CaseEntry> open =
        shown.stream().filter(e -> e.answer().isEmpty() && e.facts().held()).toList();
    for (int i = 0; i < open.size(); i++) {
      CaseEntry entry = open.get(i);
      line.at((double) i / open.size(), entry.car());
      try {
        Job job = JobReader.readUnfinished(entry.file());
        shelf.keep(entry.file(), answers.of(job, shelf.earlier(entry.file()), Progress.NONE));
      } catch (InputException | NoAnswerException | SimulationException e) {
        failed.add("Not ranked: " + e.getMessage());
      }
    }
  }
}
