package holdcurve.physics.ode;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The hold problem with its fast parts, nine states, by the lean driver. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HoldProblemBench {
  @Param({"RODAS4", "RODAS5P"})
  public RosenbrockMethod method;

  @Param({"A", "B"})
  public String variant;

  @Param({"1e-4", "1e-6"})
  public double tolerance;

  @Benchmark
  public double[][] run() {
    Tolerances tolerances = Tolerances.relative(tolerance, HoldBenchmark.FLOOR);
    LeanRosenbrockDriver driver = new LeanRosenbrockDriver(method.tableau(), tolerances);
    return HoldBenchmarkTest.solve(variant, driver, new int[2]);
  }
}
