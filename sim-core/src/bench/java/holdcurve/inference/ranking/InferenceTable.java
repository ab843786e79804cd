package holdcurve.inference.ranking;

import holdcurve.common.work.Progress;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.FitSearch;
import holdcurve.inference.fit.Start;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.prior.FaultPriors;

import holdcurve.bench.Clock;
import holdcurve.fault.FaultCatalogue;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.Job;
import holdcurve.record.limit.PassLimit;
import holdcurve.advice.plan.Planner;
import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Changes;
import holdcurve.advice.whatif.WhatIf;
import java.util.List;
import java.util.Locale;

/** What a ranking spends, for an invented job of four holds with 60 readings each. */
public final class InferenceTable {
  private static final int CLAMPED_BOTH = 3;
  private static final int WARMING = 6;
  private static final int RUNS = 4;

  private InferenceTable() {}

  /** Measures and prints. */
  public static void print() {
    Job job = InventedJob.of();
    JobModel data = JobModel.of(job);
    HypothesisModel model = InventedJob.model(job, new HoldSimulator());
    List<Fit> fits =
        new FitSearch(data, model, Double.NEGATIVE_INFINITY, Progress.NONE)
            .from(List.of(), List.of(Start.of(new double[model.dimension()])));
    double[] u = fits.get(0).u();
    double[] times = data.series().get(CLAMPED_BOTH).time();
    int[] curve = model.latentMap().latents().curve();
    System.out.println("\nInference, an invented job of four holds with 60 readings each");
    System.out.println("| what | time |\n|---|---|");
    line("one clamped hold, from unknowns to readings", () -> model.curve(u, CLAMPED_BOTH, times));
    line("likelihood of the job: four holds", () -> model.residuals(u));
    line("four holds with sensitivities by all unknowns", () -> model.linear(u, curve));
    printRanking(job);
  }

  private static void line(String what, Runnable work) {
    System.out.printf(Locale.ROOT, "| %s | %.0f µs |%n", what, Clock.fastest(work));
  }

  private static void printRanking(Job job) {
    FaultCatalogue catalogue = FaultCatalogue.load();
    if (catalogue.faults().isEmpty()) {
      System.out.println("Rankings are left out: compile the plugins module first.");
      return;
    }
    RankingService service = new RankingService(catalogue, FaultPriors.shipped(), 2);
    double cold = Clock.fastestOf(1, () -> service.rank(job, 1, Progress.NONE));
    Clock.fastestOf(WARMING, () -> service.rank(job, 1, Progress.NONE));
    double warm = Clock.fastestOf(RUNS, () -> service.rank(job, 1, Progress.NONE));
    String faults = catalogue.faults().size() + " faults, two threads";
    row("full ranking, " + faults + ", first in the process", cold);
    row("full ranking, " + faults + ", warm", warm);
    printPlan(job, service);
    RankingCosts.print(job, catalogue);
  }

  private static void printPlan(Job job, RankingService service) {
    Posterior posterior = service.believe(job, 1, Planner.DRAWS, Progress.NONE);
    row("plan", Clock.fastestOf(RUNS, () -> Planner.plan(posterior, 1, Progress.NONE)));
    Change warmer = Changes.warmth(5);
    Runnable step =
        () -> {
          WhatIf whatIf = WhatIf.quick(posterior.posterior(), PassLimit::usual, 1);
          whatIf.hold(job.circuit(), Change.none());
          whatIf.hold(job.circuit(), warmer);
        };
    Clock.fastestOf(WARMING, step);
    row("a step of a slider of What if, two holds with bands", Clock.fastestOf(RUNS, step));
  }

  /**
   * @param time [s]
   */
  static void row(String what, double time) {
    System.out.printf(Locale.ROOT, "| %s | %.3f s |%n", what, time);
  }
}
