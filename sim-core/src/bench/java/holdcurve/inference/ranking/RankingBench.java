package holdcurve.inference.ranking;

import holdcurve.common.work.Progress;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.FitSearch;
import holdcurve.inference.fit.Start;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;

import holdcurve.physics.circuit.Condition;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What a ranking spends its time on, for an invented job of four holds with 60 readings each. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RankingBench {
  private static final int CLAMPED_BOTH = 3;

  private final Job job = InventedJob.of();
  private final HoldSimulator simulator = new HoldSimulator();
  private final HypothesisModel model = InventedJob.model(job, simulator);
  private final JobModel data = JobModel.of(job);
  private final double[] u = new double[model.dimension()];
  private final double[] times = data.series().get(CLAMPED_BOTH).time();

  /** One curve, from latent coordinates to what the gauge shows. */
  @Benchmark
  public Object curve() {
    return model.curve(u, CLAMPED_BOTH, times);
  }

  /** The same curve from a circuit that is there. */
  @Benchmark
  public double[] readings() {
    Condition condition = model.latentMap().condition(u, CLAMPED_BOTH);
    HoldSetup setup = model.latentMap().setup(u, CLAMPED_BOTH);
    return simulator.readings(condition, setup, times);
  }

  /** Four curves with all their sensitivities. */
  @Benchmark
  public Object linear() {
    return model.linear(u, model.latentMap().latents().curve());
  }

  /** The fit of one hypothesis from the middle of its prior. */
  @Benchmark
  public final List<Fit> fits() {
    return new FitSearch(data, model, Double.NEGATIVE_INFINITY, Progress.NONE)
        .from(List.of(), List.of(Start.of(new double[model.dimension()])));
  }
}
