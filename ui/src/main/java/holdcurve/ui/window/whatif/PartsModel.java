package holdcurve.ui.window.whatif;

import holdcurve.advice.plan.CheapestOrder;
import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.Planner;
import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairChances;
import holdcurve.advice.whatif.RepairOffer;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.PriceListReader;
import holdcurve.file.PriceListWriter;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.record.limit.PassLimit;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Repairs with the chance that the hold passes after each, the user's prices, and the order of
 * tests and repairs that costs least.
 */
public final class PartsModel {
  private static final long SEED = 1;

  private final OpenJobModel jobs;
  private final Supplier<FaultCatalogue> faults;
  private final Runnable tried;
  private final ObservableList<Remedy> remedies = FXCollections.observableArrayList();
  private final ObservableList<Remedy> shown = FXCollections.unmodifiableObservableList(remedies);
  private final ReadOnlyDoubleWrapper unrepaired = new ReadOnlyDoubleWrapper(Double.NaN);
  private final StringProperty currency = new SimpleStringProperty("");
  private final DoubleProperty perHour = new SimpleDoubleProperty();
  private final ReadOnlyObjectWrapper<CostPlan> order = new ReadOnlyObjectWrapper<>();

  private Job job;
  private List<HypothesisPosterior> believed = List.of();
  private Posterior known;
  private PriceList loaded;
  private Circuit loadedFor;
  private Plan plan;

  /**
   * @param faults asked in the background, for the faults that a price list may name
   * @param tried run when what is tried has changed
   */
  PartsModel(OpenJobModel jobs, Supplier<FaultCatalogue> faults, Runnable tried) {
    this.jobs = jobs;
    this.faults = faults;
    this.tried = tried;
    currency.addListener((property, before, now) -> order.set(null));
    perHour.addListener((property, before, now) -> order.set(null));
  }

  /** Nothing is known, or something else is to come. */
  void clear() {
    remedies.clear();
    unrepaired.set(Double.NaN);
    order.set(null);
    plan = null;
  }

  /**
   * Starts afresh with what is believed now.
   *
   * @param knownOrNull what further questions can be asked of; null before a ranking
   */
  void begin(Job asked, List<HypothesisPosterior> posterior, Posterior knownOrNull) {
    job = asked;
    believed = posterior;
    known = knownOrNull;
    plan = null;
    if (!Objects.equals(loadedFor, asked.circuit())) {
      loaded = null;
    }
    weigh(loaded == null ? Remedy.offers(posterior) : loaded.offers());
  }

  private void weigh(List<RepairOffer> offers) {
    Job asked = job;
    List<HypothesisPosterior> posterior = believed;
    jobs.work()
        .start(
            "Working out chances of repairs",
            progress -> chances(asked, posterior, offers),
            chances -> show(asked, chances));
  }

  private static RepairChances chances(
      Job job, List<HypothesisPosterior> posterior, List<RepairOffer> offers) {
    PassLimit limit = job.upkeep().passOf(job.circuit());
    return new RepairChances(posterior, job.circuit(), limit, offers, SEED);
  }

  private void show(Job asked, RepairChances chances) {
    if (asked != job) {
      return;
    }
    List<Remedy> found = new ArrayList<>();
    for (int i = 0; i < chances.offers().size(); i++) {
      found.add(watched(new Remedy(chances.offers().get(i), chances.passes(1 << i))));
    }
    unrepaired.set(chances.passes(0));
    order.set(null);
    remedies.setAll(found);
    tried.run();
  }

  private Remedy watched(Remedy remedy) {
    remedy.triedProperty().addListener((property, before, now) -> tried.run());
    remedy.priceProperty().addListener((property, before, now) -> order.set(null));
    remedy.minutesProperty().addListener((property, before, now) -> order.set(null));
    return remedy;
  }

  /** Reads a price list in the background; its repairs then take the place of those shown. */
  public void open(Path file) {
    Circuit circuit = job.circuit();
    jobs.work()
        .start(
            "Reading the price list",
            progress -> PriceListReader.read(file, circuit, ids(faults.get())),
            list -> take(circuit, list));
  }

  private static Set<String> ids(FaultCatalogue catalogue) {
    return catalogue.faults().stream().map(LeakFault::id).collect(Collectors.toSet());
  }

  private void take(Circuit circuit, PriceList list) {
    loaded = list;
    loadedFor = circuit;
    currency.set(list.currency());
    perHour.set(list.perHour());
    weigh(list.offers());
  }

  /** Writes repairs and prices as they stand, for the next job. */
  public void save(Path file) {
    PriceList list = prices();
    jobs.work()
        .start(
            "Saving the prices",
            progress -> {
              PriceListWriter.write(file, list);
              return list;
            },
            written -> {});
  }

  /** Repairs and prices as they stand. */
  PriceList prices() {
    return new PriceList(
        currency.get().strip(), perHour.get(), remedies.stream().map(Remedy::priced).toList());
  }

  /** Works out the cheapest order in the background, or says what it takes. */
  public void order() {
    if (known == null || known.posterior().isEmpty() || remedies.isEmpty()) {
      jobs.report("An order of tests and repairs needs a ranking: take a hold, then press F5.");
      return;
    }
    Job asked = job;
    PriceList prices = prices();
    jobs.work()
        .start(
            "Working out the cheapest order",
            progress -> {
              Plan tests = planned(known, progress);
              RepairChances chances = chances(asked, known.posterior(), prices.offers());
              return CheapestOrder.of(tests, chances, prices);
            },
            found -> ordered(asked, found));
  }

  private synchronized Plan planned(Posterior posterior, Progress progress) {
    if (plan == null) {
      plan = Planner.plan(posterior, SEED, progress);
    }
    return plan;
  }

  private void ordered(Job asked, CostPlan found) {
    if (asked == job) {
      order.set(found);
    }
  }

  /** Repairs, in the order of the list; empty until their chances are known. */
  public ObservableList<Remedy> remedies() {
    return shown;
  }

  /** Chance that the hold passes as it is [-]; not-a-number until it is known. */
  public ReadOnlyDoubleProperty unrepairedProperty() {
    return unrepaired.getReadOnlyProperty();
  }

  /** Sign or name of the currency; may be empty. */
  public StringProperty currencyProperty() {
    return currency;
  }

  /** What an hour of work counts. */
  public DoubleProperty perHourProperty() {
    return perHour;
  }

  /** The cheapest order; null until it was asked for, and after changes. */
  public ReadOnlyObjectProperty<CostPlan> orderProperty() {
    return order.getReadOnlyProperty();
  }
}
