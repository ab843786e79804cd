package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Changes;
import holdcurve.advice.whatif.HoldOutlook;
import holdcurve.advice.whatif.Outlook;
import holdcurve.advice.whatif.WhatIf;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.WorkModel;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.SeveralHolds;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;

/**
 * What is tried on the open job and what it would do. The hold follows each change at once, from a
 * few draws; chance, build-up and rail pressure follow when there is a pause.
 */
public final class WhatIfModel {
  private static final long SEED = 1;
  private static final int SOUND_DRAWS = 60;
  private static final double SHOWN = 600;

  /**
   * What a plot shows beside the other.
   *
   * @param before the hold as it is
   * @param after the hold with everything that is tried
   */
  record Holds(HoldOutlook before, HoldOutlook after) {}

  /** Likewise, with everything else that is compared. */
  record Figures(Outlook before, Outlook after, List<String> notes) {}

  private final OpenJobModel jobs;
  private final Supplier<FaultCatalogue> faults;
  private final PartsModel parts;
  private final ObservableList<Lever> levers = FXCollections.observableArrayList();
  private final ObservableList<Swap> swaps = FXCollections.observableArrayList();
  private final ObservableList<Change> extras = FXCollections.observableArrayList();
  private final ObservableList<Change> shownExtras =
      FXCollections.unmodifiableObservableList(extras);
  private final ObservableList<AddableFault> addable = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Holds> holds = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Figures> figures = new ReadOnlyObjectWrapper<>();

  private final TrialHistory history = new TrialHistory();

  private Job job;
  private List<HypothesisPosterior> posterior = List.of();
  private WorkModel.Item quick;
  private WorkModel.Item thorough;

  /**
   * @param faults asked in the background
   */
  public WhatIfModel(OpenJobModel jobs, Supplier<FaultCatalogue> faults) {
    this.jobs = jobs;
    this.faults = faults;
    this.parts = new PartsModel(jobs, faults, this::changed);
    parts.remedies().addListener(this::watch);
    extras.addListener((ListChangeListener<Change>) change -> changed());
    jobs.jobProperty().addListener((property, before, now) -> jobChanged(now));
    jobs.ranking().posteriorProperty().addListener((property, before, now) -> begin());
    jobChanged(jobs.jobProperty().get());
  }

  private void watch(ListChangeListener.Change<? extends Remedy> change) {
    history.clear();
    change.getList().forEach(remedy -> history.watch(remedy.triedProperty()));
  }

  private void jobChanged(Job now) {
    boolean sameCircuit = job != null && now != null && job.circuit().equals(now.circuit());
    job = now;
    if (!sameCircuit) {
      begin();
    }
  }

  /** Starts afresh with what is believed now. */
  private void begin() {
    parts.clear();
    levers.clear();
    swaps.clear();
    extras.clear();
    addable.clear();
    history.clear();
    stop();
    holds.set(null);
    figures.set(null);
    if (job == null) {
      return;
    }
    Job asked = job;
    Posterior known = jobs.ranking().posteriorProperty().get();
    boolean ranked = known != null && !known.posterior().isEmpty();
    quick =
        jobs.work()
            .start(
                "Asking what could be changed",
                progress -> ranked ? known.posterior() : sound(asked),
                believed -> offer(asked, believed));
  }

  private static List<HypothesisPosterior> sound(Job job) {
    List<PosteriorDraw> draws = PosteriorDraw.before(job.circuit(), job.gauge(), SEED, SOUND_DRAWS);
    return List.of(new HypothesisPosterior(new Hypothesis(List.of(), 1), 1, draws));
  }

  private void offer(Job asked, List<HypothesisPosterior> believed) {
    posterior = believed;
    figures.set(null);
    levers.setAll(Lever.of(asked.circuit()));
    levers.forEach(lever -> lever.valueProperty().addListener((p, before, now) -> changed()));
    levers.forEach(lever -> history.watch(lever.valueProperty()));
    swaps.setAll(Swap.of(asked.circuit()));
    swaps.forEach(swap -> swap.chosenProperty().addListener((p, before, now) -> changed()));
    swaps.forEach(swap -> history.watch(swap.chosenProperty()));
    parts.begin(asked, believed, jobs.ranking().posteriorProperty().get());
    listFaults();
    changed();
  }

  /** Asks afresh which faults there are, as when plugins came or went. */
  public void listFaults() {
    if (job != null) {
      Circuit circuit = job.circuit();
      jobs.work()
          .start(
              "Looking which faults there are",
              progress -> AddableFault.of(circuit, faults.get()),
              found -> addable.setAll(found));
    }
  }

  /** Everything that is tried. */
  Change tried() {
    Change all = Change.none();
    for (Remedy remedy : parts.remedies()) {
      all = remedy.triedProperty().get() ? all.and(remedy.offer().change(job.circuit())) : all;
    }
    for (Lever lever : levers) {
      all = lever.change().map(all::and).orElse(all);
    }
    for (Swap swap : swaps) {
      all = all.and(swap.change());
    }
    for (Change extra : extras) {
      all = all.and(extra);
    }
    return all;
  }

  /** Tries one thing more, such as a renewed part or an added fault. */
  void add(Change extra) {
    extras.add(extra);
    history.note(new Object(), () -> extras.remove(extra));
  }

  /** Tries it no longer. */
  void remove(Change extra) {
    extras.remove(extra);
    history.note(new Object(), () -> extras.add(extra));
  }

  /**
   * Takes back what was tried last.
   *
   * @return whether there was anything
   */
  boolean takeBack() {
    return history.back();
  }

  /** A part as good as new. */
  void renew(Part part) {
    add(Changes.replace(part));
  }

  /** Parts that can be renewed; none without a job. */
  List<Part> renewable() {
    return job == null
        ? List.of()
        : job.circuit().parts().stream()
            .filter(part -> part.kind().ports() != Ports.PLACE)
            .toList();
  }

  private void changed() {
    if (job == null || posterior.isEmpty()) {
      return;
    }
    stop();
    Change tried = tried();
    Job asked = job;
    List<HypothesisPosterior> believed = posterior;
    quick =
        jobs.work()
            .start(
                "Following the change",
                progress -> quickly(asked, believed, tried),
                found -> {
                  holds.set(found);
                  thorough(asked, believed, tried);
                });
  }

  private static Holds quickly(Job asked, List<HypothesisPosterior> believed, Change tried) {
    WhatIf whatIf = WhatIf.quick(believed, asked.upkeep()::passOf, SEED);
    return new Holds(
        whatIf.hold(asked.circuit(), Change.none()), whatIf.hold(asked.circuit(), tried));
  }

  private void thorough(Job asked, List<HypothesisPosterior> believed, Change tried) {
    Outlook known = figures.get() == null ? null : figures.get().before();
    thorough =
        jobs.work()
            .start(
                "Comparing before and after",
                progress -> fully(asked, believed, known, tried, progress),
                figures::set);
  }

  private static Figures fully(
      Job asked,
      List<HypothesisPosterior> believed,
      Outlook known,
      Change tried,
      Progress progress) {
    WhatIf whatIf = new WhatIf(believed, asked.upkeep()::passOf, SEED);
    Outlook before = known == null ? whatIf.outlook(asked.circuit(), Change.none()) : known;
    progress.at(0.5, "after");
    return new Figures(
        before,
        tried.isNone() ? before : whatIf.outlook(asked.circuit(), tried),
        WhatIf.notes(asked.circuit(), tried));
  }

  private void stop() {
    Optional.ofNullable(quick).ifPresent(WorkModel.Item::cancel);
    Optional.ofNullable(thorough).ifPresent(WorkModel.Item::cancel);
  }

  /** Everything back to as the circuit is. */
  void reset() {
    history.together(this::resetAll);
  }

  private void resetAll() {
    parts.remedies().forEach(remedy -> remedy.triedProperty().set(false));
    levers.forEach(Lever::reset);
    swaps.forEach(Swap::reset);
    List.copyOf(extras).forEach(this::remove);
  }

  /** What is expected before and after, over one another, with what was read. */
  SeveralHolds bothPlots() {
    return SeveralHolds.of(
            List.of("before, with what was read", "after"), List.of(beforePlot(), afterPlot()))
        .withoutResiduals();
  }

  /** The readings of the first hold without clamps, with the curve expected before. */
  HoldPlot beforePlot() {
    return plot(readings(), holds.get().before());
  }

  private HoldTest readings() {
    return job.tests().stream()
        .filter(test -> test.clamped().isEmpty())
        .findFirst()
        .orElseGet(WhatIfModel::nothingRead);
  }

  /** The curve expected after, on the same axes. */
  HoldPlot afterPlot() {
    return plot(nothingRead(), holds.get().after());
  }

  private static HoldTest nothingRead() {
    return HoldTest.of("no readings", Set.of(), new GaugeLog("none", List.of(), 0));
  }

  private HoldPlot plot(HoldTest test, HoldOutlook shown) {
    return HoldPlot.of(
        test,
        new HoldPlot.Wish(
            Optional.of(shown.curve()),
            List.of(holds.get().before().curve(), holds.get().after().curve()),
            Math.max(SHOWN, readings().log().holdSpan()),
            false,
            jobs.pressures().unit()));
  }

  /** Repairs that can be tried, with chances and prices. */
  public PartsModel parts() {
    return parts;
  }

  /** Repairs that can be tried; empty until they are known. */
  ObservableList<Remedy> remedies() {
    return parts.remedies();
  }

  /** Things that may be exchanged for another kind. */
  ObservableList<Swap> swaps() {
    return swaps;
  }

  /** What is tried besides. */
  ObservableList<Change> extras() {
    return shownExtras;
  }

  /** Faults that can be added; empty until they are known. */
  ObservableList<AddableFault> addable() {
    return addable;
  }

  /** Quantities that can be changed. */
  ObservableList<Lever> levers() {
    return levers;
  }

  /** The hold before and after; null until it is known. */
  ReadOnlyObjectProperty<Holds> holdsProperty() {
    return holds.getReadOnlyProperty();
  }

  /** All that is compared, a little later than the holds; null until it is known. */
  ReadOnlyObjectProperty<Figures> figuresProperty() {
    return figures.getReadOnlyProperty();
  }

  OpenJobModel jobs() {
    return jobs;
  }
}
