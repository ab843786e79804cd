package holdcurve.ui.window.suspects;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.RankingTable;
import holdcurve.file.RankingWriter;
import holdcurve.file.ResultFile;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.balance.FallReport;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Timeline;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.SeveralHolds;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Which suspects are listed, which is chosen, and what the plots show. */
public final class SuspectsModel {
  /** Suspects below this have no say in the ends of the axes [-]. */
  private static final double PLAUSIBLE = 0.02;

  /** Shortest time axis of a plot [s]. */
  private static final double LEAST_SPAN = 1;

  private final OpenJobModel jobs;
  private final BooleanProperty showBuildUp = new SimpleBooleanProperty();
  private final ObservableList<SuspectRow> rows = FXCollections.observableArrayList();
  private final ObservableList<HoldPlot> plots = FXCollections.observableArrayList();
  private final ObservableList<SuspectRow> shownRows =
      FXCollections.unmodifiableObservableList(rows);
  private final ObservableList<HoldPlot> shownPlots =
      FXCollections.unmodifiableObservableList(plots);
  private final ObjectProperty<SuspectRow> chosen = new SimpleObjectProperty<>();
  private final StringProperty shownTest = new SimpleStringProperty("");
  private final BooleanProperty showUnlikely = new SimpleBooleanProperty();
  private final ReadOnlyIntegerWrapper unlikely = new ReadOnlyIntegerWrapper();

  public SuspectsModel(OpenJobModel jobs) {
    this.jobs = jobs;
    jobs.jobProperty().addListener((property, before, now) -> plot());
    jobs.ranking().resultProperty().addListener((property, before, now) -> list());
    showUnlikely.addListener((property, before, now) -> list());
    chosen.addListener((property, before, now) -> choose());
    showBuildUp.addListener((property, before, now) -> plot());
    jobs.pressures().unitProperty().addListener((property, before, now) -> plot());
    list();
    plot();
  }

  private void list() {
    Ranking ranking = jobs.ranking().resultProperty().get();
    SuspectRow before = chosen.get();
    rows.setAll(ranking == null ? List.of() : RankingOrder.rows(ranking, showUnlikely.get()));
    unlikely.set(ranking == null ? 0 : RankingOrder.unlikely(ranking));
    chosen.set(
        rows.stream()
            .filter(row -> before != null && row.suspect().id().equals(before.suspect().id()))
            .findFirst()
            .orElse(rows.isEmpty() ? null : rows.get(0)));
  }

  private void choose() {
    jobs.ranking().chosenProperty().set(chosenSuspect().orElse(null));
    plot();
  }

  private void plot() {
    Job job = jobs.jobProperty().get();
    plots.setAll(job == null ? List.of() : plots(job, LEAST_SPAN, showBuildUp.get()));
  }

  /** All holds in one plot, with what the chosen suspect expects; empty without a reading. */
  Optional<SeveralHolds> together() {
    Job job = jobs.jobProperty().get();
    if (job == null) {
      return Optional.empty();
    }
    double span = job.tests().stream().mapToDouble(t -> t.log().holdSpan()).max().orElse(0);
    List<HoldPlot> all =
        plots(job, Math.max(LEAST_SPAN, span), false).stream()
            .filter(plot -> !plot.marks().isEmpty())
            .toList();
    return all.isEmpty() ? Optional.empty() : Optional.of(SeveralHolds.of(all));
  }

  private List<HoldPlot> plots(Job job, double span, boolean buildUp) {
    Ranking ranking = jobs.ranking().resultProperty().get();
    List<Suspect> suspects = ranking == null ? List.of() : ranking.suspects();
    return job.tests().stream()
        .sorted(Comparator.comparing((HoldTest test) -> !test.clamped().isEmpty()))
        .map(test -> HoldPlot.of(test, wish(test.id(), suspects, span, buildUp)))
        .toList();
  }

  private HoldPlot.Wish wish(String test, List<Suspect> suspects, double span, boolean buildUp) {
    return new HoldPlot.Wish(
        chosenSuspect().flatMap(suspect -> curve(suspect, test)),
        suspects.stream()
            .filter(suspect -> suspect.probability() >= PLAUSIBLE)
            .flatMap(suspect -> curve(suspect, test).stream())
            .toList(),
        span,
        buildUp,
        jobs.pressures().unit());
  }

  private static Optional<HoldCurve> curve(Suspect suspect, String test) {
    return suspect.curves().stream().filter(curve -> curve.test().equals(test)).findFirst();
  }

  private Optional<Suspect> chosenSuspect() {
    return Optional.ofNullable(chosen.get()).map(SuspectRow::suspect);
  }

  /**
   * Writes the ranking in the background: as JSON if the name ends so, else as CSV.
   *
   * @param file replaced in one step, with a backup
   */
  public void save(Path file) {
    Ranking ranking = jobs.ranking().resultProperty().get();
    if (ranking == null) {
      jobs.report("There is no ranking yet: press F5.");
      return;
    }
    boolean json = file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    jobs.work()
        .start(
            "Writing the ranking",
            progress -> {
              ResultFile.write(
                  file, json ? RankingWriter.json(ranking) : RankingTable.csv(ranking));
              return file;
            },
            written -> {});
  }

  /** What is listed, likeliest first. */
  ObservableList<SuspectRow> rows() {
    return shownRows;
  }

  /** One plot a hold test; those without clamps first, otherwise in the order they were done. */
  ObservableList<HoldPlot> plots() {
    return shownPlots;
  }

  /** The row whose curve shows; null before there is a ranking. */
  ObjectProperty<SuspectRow> chosenProperty() {
    return chosen;
  }

  /** Whether suspects below one per cent are listed too. */
  BooleanProperty showUnlikelyProperty() {
    return showUnlikely;
  }

  /** Whether readings before the pump stop are plotted too. */
  BooleanProperty showBuildUpProperty() {
    return showBuildUp;
  }

  /** A pressure in the unit shown. */
  String pressure(double pascals) {
    return jobs.pressures().text(pascals);
  }

  /** The number alone. */
  String pressureNumber(double pascals) {
    return jobs.pressures().number(pascals);
  }

  /** Id of the hold test whose plot is looked at; empty for none. */
  StringProperty shownTestProperty() {
    return shownTest;
  }

  /** Where the fall of the hold looked at went; empty where that isn't known. */
  Optional<FallReport> fall() {
    return Optional.ofNullable(jobs.ranking().resultProperty().get()).stream()
        .flatMap(ranking -> ranking.falls().stream())
        .filter(fall -> fall.test().equals(shownTest.get()))
        .findFirst();
  }

  /** What speaks for and against the chosen suspect; empty where that isn't known. */
  Optional<Reasons> reasons() {
    return Optional.ofNullable(jobs.ranking().resultProperty().get()).stream()
        .flatMap(ranking -> ranking.reasons().stream())
        .filter(one -> chosenSuspect().filter(s -> s.id().equals(one.suspect())).isPresent())
        .findFirst();
  }

  /** The unit in which pressures are shown. */
  ObservableValue<PressureUnit> unit() {
    return jobs.pressures().unitProperty();
  }

  /** How many suspects are below one per cent. */
  ReadOnlyIntegerProperty unlikelyProperty() {
    return unlikely.getReadOnlyProperty();
  }

  /** The ranking behind the list; null until it is there. */
  ObservableValue<Ranking> ranking() {
    return jobs.ranking().resultProperty();
  }

  /** Assumptions of the ranking and what was understood of the files. */
  List<String> notes() {
    Ranking ranking = jobs.ranking().resultProperty().get();
    Job job = jobs.jobProperty().get();
    List<Message> assumed = ranking == null ? List.of() : ranking.notes();
    List<Message> understood = job == null ? List.of() : job.understood();
    return Stream.concat(assumed.stream(), understood.stream())
        .map(message -> message.in(jobs.pressures().unit()))
        .distinct()
        .toList();
  }

  /** Whether a ranking is under way. */
  ObservableValue<Boolean> busy() {
    return jobs.ranking().busyProperty();
  }

  /** Why there is no ranking, in words. */
  String notRanked() {
    return jobs.unproved().map(Timeline::holdAgain).orElse("Not ranked yet (F5).");
  }

  /** The open job; null while there is none. */
  ObservableValue<Job> job() {
    return jobs.jobProperty();
  }
}
