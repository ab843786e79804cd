package holdcurve.ui.window.cases;

import holdcurve.casebook.CarHistory;
import holdcurve.casebook.CaseAnswers;
import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.CaseSelection;
import holdcurve.casebook.Correction;
import holdcurve.casebook.JobState;
import holdcurve.casebook.KnownAnswer;
import holdcurve.casebook.LearnedRates;
import holdcurve.casebook.RatesInUse;
import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CaseShelf;
import holdcurve.file.CaseTable;
import holdcurve.file.JobReader;
import holdcurve.file.RatesFile;
import holdcurve.file.ResultFile;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.network.SimulationException;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.OpenJobPath;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The case book as the page shows it. */
public final class CasesModel {
  /** What the page shows besides the list. */
  record Shown(
      CaseNotes notes,
      CaseBook book,
      List<LeakFault> faults,
      LearnedRates rates,
      Map<String, Double> used) {}

  private final OpenJobModel jobs;
  private final FaultsModel faults;
  private final CaseShelf shelf;
  private final Supplier<RankingService> ranker;

  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>();
  private final ObservableList<CaseEntry> entries = FXCollections.observableArrayList();
  private final StringProperty search = new SimpleStringProperty("");
  private final ObjectProperty<JobState> state = new SimpleObjectProperty<>();
  private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

  /**
   * @param ranker with the rates that are used, asked for in the background
   */
  public CasesModel(
      OpenJobModel jobs, FaultsModel faults, CaseShelf shelf, Supplier<RankingService> ranker) {
    this.jobs = jobs;
    this.faults = faults;
    this.shelf = shelf;
    this.ranker = ranker;
    search.addListener((property, before, now) -> select());
    state.addListener((property, before, now) -> select());
    jobs.ranking().resultProperty().addListener((property, before, now) -> keepAnswer());
    jobs.check().valueProperty().addListener((property, before, now) -> keepAnswer());
  }

  /** The case book shows what the window worked out, as long as it is about the file as it is. */
  private void keepAnswer() {
    Path file = jobs.fileProperty().get();
    if (shown.get() == null || file == null || jobs.unsaved().get()) {
      return;
    }
    Optional<KnownAnswer> answer = OpenJobPath.answer(jobs);
    answer.ifPresent(
        known ->
            jobs.work()
                .start(
                    "Keeping the answer",
                    progress -> {
                      shelf.keep(file, known);
                      return known;
                    },
                    kept -> {}));
  }

  /** Looks through the folders again. */
  void look() {
    jobs.work().start("Reading the case book", this::read, this::show);
  }

  private Shown read(Progress progress) {
    CaseNotes notes = shelf.notes();
    CaseBook book = notes.folders().isEmpty() ? shelf.listed(notes) : shelf.list(notes, progress);
    FaultCatalogue catalogue = faults.catalogue();
    return new Shown(
        notes,
        book,
        catalogue.faults(),
        LearnedRates.of(catalogue, FaultPriors.shipped(), book.counts()),
        shelf.priors(catalogue).rates());
  }

  private void show(Shown now) {
    shown.set(now);
    select();
  }

  private void select() {
    if (shown.get() != null) {
      CaseSelection selection =
          new CaseSelection(
              search.get(), Optional.ofNullable(state.get()), CaseSelection.Order.DATE);
      entries.setAll(selection.of(shown.get().book()));
    }
  }

  /** Notes and list as they are now; null before they were read. */
  ReadOnlyObjectProperty<Shown> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** The cases that the search leaves. */
  ObservableList<CaseEntry> entries() {
    return entries;
  }

  StringProperty searchProperty() {
    return search;
  }

  /** Only jobs that are so far; null for all. */
  ObjectProperty<JobState> stateProperty() {
    return state;
  }

  /** What was done last, in a sentence. */
  ReadOnlyStringProperty saidProperty() {
    return said.getReadOnlyProperty();
  }

  void addFolder(Path folder) {
    note(
        notes ->
            notes.withFolders(
                Stream.concat(notes.folders().stream(), Stream.of(folder.toAbsolutePath()))
                    .distinct()
                    .toList()));
  }

  void leaveOut(Path folder) {
    note(
        notes ->
            notes.withFolders(notes.folders().stream().filter(f -> !f.equals(folder)).toList()));
  }

  /**
   * Says what a case was.
   *
   * @param fault id, {@link Correction#NONE}, or empty where the job decides
   */
  void correct(CaseEntry entry, String fault) {
    note(notes -> notes.with(entry.file(), before -> before.withFault(fault)));
  }

  /** Says which car a job is about. */
  void nameCar(CaseEntry entry, String car) {
    note(notes -> notes.with(entry.file(), before -> before.withCar(car.strip())));
  }

  /** Chooses the rates for rankings; a ranking that is open is made anew. */
  void use(RatesInUse rates) {
    if (shown.get() == null || shown.get().notes().rates().equals(rates)) {
      return;
    }
    note(notes -> notes.withRates(rates));
    if (jobs.ranking().resultProperty().get() != null) {
      jobs.rank();
    }
  }

  /** Chooses rates from a file, if it holds any. */
  void use(Path file) {
    jobs.work()
        .start(
            "Reading the rates",
            progress -> RatesFile.read(file),
            rates -> use(new RatesInUse(RatesInUse.Kind.FILE, Optional.of(file.toAbsolutePath()))));
  }

  /** Keeps at once what was said: nothing typed is lost. */
  private void note(UnaryOperator<CaseNotes> change) {
    try {
      shelf.keep(change.apply(shelf.notes()));
      look();
    } catch (InputException e) {
      jobs.report(e.getMessage());
    }
  }

  void open(CaseEntry entry) {
    jobs.open(entry.file());
  }

  /** Ranks or checks what is listed and has no verdict yet. */
  void rankListed() {
    List<CaseEntry> open =
        entries.stream().filter(e -> e.answer().isEmpty() && e.facts().held()).toList();
    if (open.isEmpty()) {
      said.set("Every job in the list that can be ranked has a verdict.");
      return;
    }
    jobs.work()
        .start(
            "Ranking the cases",
            progress -> rank(open, progress),
            failed -> {
              said.set(
                  failed.isEmpty()
                      ? "Ranked: " + open.size() + "."
                      : "Could not be ranked: " + String.join("; ", failed) + ".");
              look();
            });
  }

  private List<String> rank(List<CaseEntry> open, Progress progress) {
    CaseAnswers answers = new CaseAnswers(ranker.get(), faults.catalogue());
    List<String> failed = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      Workers.stopIfCancelled(progress);
      CaseEntry entry = open.get(i);
      progress.at((double) i / open.size(), entry.car());
      try {
        Job job = JobReader.readUnfinished(entry.file());
        shelf.keep(entry.file(), answers.of(job, shelf.earlier(entry.file()), Progress.NONE));
      } catch (InputException | NoAnswerException | SimulationException e) {
        failed.add(entry.car());
      }
    }
    return failed;
  }

  void exportCases(Path file) {
    String text = CaseTable.csv(shown.get().book(), List.copyOf(entries));
    write(file, text);
  }

  void exportRates(Path file) {
    write(file, RatesFile.json(shown.get().rates()));
  }

  private void write(Path file, String text) {
    try {
      ResultFile.write(file, text);
      said.set("Written to " + file + ".");
    } catch (InputException e) {
      jobs.report(e.getMessage());
    }
  }

  /** Reads the holds of all jobs of a car, and passes them on with what can't be read left out. */
  void holdsOfCar(CaseEntry entry, Consumer<List<HoldTest>> then) {
    CaseBook book = shown.get().book();
    List<Path> files =
        Stream.concat(Stream.of(entry), book.sameCar(entry).stream()).map(CaseEntry::file).toList();
    jobs.work()
        .start(
            "Reading the holds of this car",
            progress -> CarHistory.holds(files.stream().map(JobReader::readUnfinished).toList()),
            then);
  }

  /** A path as it is shown, with a tilde for the user's home. */
  static String shown(Path path) {
    Path home = Path.of(System.getProperty("user.home", "."));
    return path.startsWith(home)
        ? Path.of("~").resolve(home.relativize(path)).toString()
        : path.toString();
  }
}
