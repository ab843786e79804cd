package holdcurve.ui.window.suspects;

import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Planner;
import holdcurve.common.message.PressureUnit;
import holdcurve.inference.posterior.Posterior;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.WorkModel;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** Which test to do next: worked out after each ranking. */
public final class NextTestModel {
  private static final long SEED = 1;

  /** Below this nothing is worth doing for what it would tell [bit]. */
  private static final double WORTH = 0.1;

  private final OpenJobModel jobs;
  private final ReadOnlyObjectWrapper<Plan> plan = new ReadOnlyObjectWrapper<>();
  private final ObjectProperty<PlannedTest> chosen = new SimpleObjectProperty<>();
  private WorkModel.Item work;

  public NextTestModel(OpenJobModel jobs) {
    this.jobs = jobs;
    jobs.ranking().posteriorProperty().addListener((property, before, now) -> look(now));
    look(jobs.ranking().posteriorProperty().get());
  }

  private void look(Posterior posterior) {
    if (work != null) {
      work.cancel();
    }
    plan.set(null);
    chosen.set(null);
    if (posterior != null && !posterior.posterior().isEmpty()) {
      work =
          jobs.work()
              .start(
                  "Looking for the next test",
                  progress -> Planner.plan(posterior, SEED, progress),
                  this::found);
    }
  }

  private void found(Plan found) {
    plan.set(found);
    chosen.set(found.tests().isEmpty() ? null : found.tests().get(0));
  }

  /** Whether there is a test that would tell something. */
  boolean isAnyWorthIt() {
    Plan known = plan.get();
    return known != null
        && !known.tests().isEmpty()
        && known.tests().get(0).information().bits() >= WORTH;
  }

  /** Makes the chosen test ready where readings are taken. */
  void doChosen() {
    if (chosen.get() != null) {
      jobs.doTest(chosen.get().procedure());
    }
  }

  /** Makes the best test ready, whichever is looked at. */
  void doBest() {
    chosen.set(plan.get().tests().get(0));
    doChosen();
  }

  /** One line: the best test, or that none is worth it. */
  String headline() {
    Plan known = plan.get();
    if (known == null || known.tests().isEmpty()) {
      return jobs.ranking().resultProperty().get() == null
          ? "Rank the suspects (F5) to see which test would tell most."
          : "Which test tells most is being worked out, or none would.";
    }
    PlannedTest best = known.tests().get(0);
    return !isAnyWorthIt()
        ? "Next test: none would tell much more"
        : String.format(
            Locale.ROOT,
            "Next test: %s (%.0f min)",
            best.procedure().name(),
            best.procedure().minutes());
  }

  /** The unit in which pressures are shown. */
  ObjectProperty<PressureUnit> unit() {
    return jobs.pressures().unitProperty();
  }

  /** The plan; null until it is known. */
  ReadOnlyObjectProperty<Plan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  /** The test whose steps show; null for none. */
  ObjectProperty<PlannedTest> chosenProperty() {
    return chosen;
  }
}
