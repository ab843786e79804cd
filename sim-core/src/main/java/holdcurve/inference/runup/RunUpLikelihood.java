package holdcurve.inference.runup;

import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.network.Operation;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The readings before the pump stop of all tests of a job, as rows beside those of the holds.
 * Unknowns of its own: five of the running circuit, then for each run-up when the pump began to
 * deliver and what pressure was left.
 */
public final class RunUpLikelihood implements FindingLikelihood {
  private static final int OF_EACH = 2;

  /** A pressure that was read at the start is off by this much [Pa]. */
  private static final double READ = 2e3;

  /** Curves that are worth remembering: that of a place and some about it. */
  private static final int REMEMBERED = 32;

  private final Job job;
  private final Running priors;
  private final RunningCar car;
  private final List<RunUp> runs;
  private final List<RunUp> moving;
  private final RunUpError error;
  private final int rows;
  private final ThreadLocal<Bench> benches;

  private RunUpLikelihood(Job job, List<RunUp> runs) {
    this.job = job;
    this.runs = runs;
    moving = runs.stream().filter(run -> !run.isSettled()).toList();
    priors = Running.shipped();
    car = new RunningCar(job.circuit(), priors);
    error = new RunUpError(runs, priors);
    rows = runs.stream().mapToInt(run -> run.readings().size()).sum();
    benches = ThreadLocal.withInitial(() -> new Bench(job));
  }

  /** Empty where no test logged anything before the pump stop that speaks. */
  public static Optional<RunUpLikelihood> of(Job job) {
    List<RunUp> runs = new ArrayList<>();
    for (int i = 0; i < job.tests().size(); i++) {
      RunUp.of(job.tests().get(i), i, job.gauge()).ifPresent(runs::add);
    }
    return runs.isEmpty() ? Optional.empty() : Optional.of(new RunUpLikelihood(job, runs));
  }

  public List<RunUp> runs() {
    return runs;
  }

  /** What the needle showed just before the pump stopped in a test [Pa gauge]; empty if unread. */
  public OptionalDouble justBefore(int test) {
    for (RunUp run : runs) {
      if (run.test() == test) {
        return run.justBefore();
      }
    }
    return OptionalDouble.empty();
  }

  @Override
  public int rows() {
    return rows;
  }

  /** Where nothing but settled readings are, nothing else matters. */
  @Override
  public Reach reach() {
    return moving.isEmpty() ? Reach.SETTLED : Reach.RUNNING;
  }

  @Override
  public int unknowns() {
    return RunningCar.UNKNOWNS + OF_EACH * moving.size();
  }

  /** What an unknown is, in words that "rather high" can follow. */
  public String unknown(int k) {
    if (k < RunningCar.UNKNOWNS) {
      return RunningCar.WORDS.get(k);
    }
    int own = k - RunningCar.UNKNOWNS;
    String in = " in '" + job.tests().get(moving.get(own / OF_EACH).test()).id() + "'";
    return (own % OF_EACH == 0 ? "a time to spin up" : "a pressure left") + in;
  }

  @Override
  public double differenceStep() {
    return 0.05;
  }

  @Override
  public void residuals(CircuitState truth, double[] out, int offset) {
    Condition condition = running(truth);
    Set<String> changed = changed(truth);
    int place = offset;
    for (RunUp run : runs) {
      List<RunUp.Sample> readings = run.readings();
      double[] curve = curve(truth, condition, changed, run, times(readings));
      for (int k = 0; k < curve.length; k++) {
        out[place++] = readings.get(k).pressure() - curve[k] - truth.gaugeOffset();
      }
    }
    error.whiten(out, offset);
  }

  private static double[] times(List<RunUp.Sample> readings) {
    return readings.stream().mapToDouble(RunUp.Sample::time).toArray();
  }

  /**
   * What the gauge shows before the pump stop, without its own error [Pa gauge].
   *
   * @param i place in {@link #runs}
   * @param times since the pump stop, ascending, all negative [s]
   */
  public double[] curve(CircuitState truth, int i, double[] times) {
    return curve(truth, running(truth), changed(truth), runs.get(i), times);
  }

  private double[] curve(
      CircuitState truth, Condition condition, Set<String> changed, RunUp run, double[] times) {
    if (run.isSettled()) {
      return benches.get().settled(changed, condition, run, times);
    }
    int own = RunningCar.UNKNOWNS + OF_EACH * moving.indexOf(run);
    double late = priors.spinUp() + run.start().deviation() * truth.unknown(this, own);
    double on = run.start().time() + late;
    double pressure = left(run.start(), truth.unknown(this, own + 1));
    return benches.get().curve(changed, condition, on, pressure, run, times);
  }

  private Condition running(CircuitState truth) {
    double[] z = new double[RunningCar.UNKNOWNS];
    for (int k = 0; k < z.length; k++) {
      z[k] = truth.unknown(this, k);
    }
    return car.of(truth.condition(CircuitState.ALL_TESTS), truth.sound().circuit(), z);
  }

  private static Set<String> changed(CircuitState truth) {
    return changed(truth.condition(CircuitState.ALL_TESTS).circuit(), truth.sound().circuit());
  }

  /** Ids of the parts that a fault has changed. */
  private static Set<String> changed(Circuit faulty, Circuit sound) {
    Set<String> changed = new HashSet<>();
    for (Part part : faulty.parts()) {
      Part before = sound.part(part.id());
      if (part != before && !part.equals(before)) {
        changed.add(part.id());
      }
    }
    return changed;
  }

  private double left(RunUp.Start start, double z) {
    return start.pressure().isPresent()
        ? Math.max(0, start.pressure().getAsDouble() + READ * z)
        : priors.residual() * Math.exp(z);
  }

  /** What one thread needs. */
  private static final class Bench {
    private final Job job;
    private final Map<Set<String>, RunUpSimulator> simulators = new LinkedHashMap<>();
    private final Map<List<Object>, double[]> remembered =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<List<Object>, double[]> eldest) {
            return size() > REMEMBERED;
          }
        };

    Bench(Job job) {
      this.job = job;
    }

    double[] settled(Set<String> faulty, Condition condition, RunUp run, double[] times) {
      double[] shown = new double[times.length];
      for (int i = 0; i < times.length; i++) {
        RunUp.Stage stage = run.stageAt(times[i]);
        Operation operation = RunUp.operation(stage, temperature(run));
        List<Object> key =
            List.of(
                condition.circuit().parts(),
                condition.leaks(),
                faulty,
                stage.duty(),
                operation.fuelTemperature());
        double[] known = remembered.get(key);
        if (known == null) {
          known = new double[] {simulator(faulty).settled(condition, operation)};
          remembered.put(key, known);
        }
        shown[i] = known[0];
      }
      return shown;
    }

    private RunUpSimulator simulator(Set<String> faulty) {
      return simulators.computeIfAbsent(faulty, parts -> new RunUpSimulator(job.circuit(), parts));
    }

    double[] curve(
        Set<String> faulty,
        Condition condition,
        double on,
        double pressure,
        RunUp run,
        double[] times) {
      List<Object> key =
          List.of(
              condition.circuit().parts(),
              condition.leaks(),
              faulty,
              on,
              pressure,
              run.test(),
              times.length,
              times[0]);
      double[] known = remembered.get(key);
      if (known == null) {
        known =
            simulator(faulty)
                .readings(condition, on, pressure, run.stages(), temperature(run), times);
        remembered.put(key, known);
      }
      return known;
    }

    private double temperature(RunUp run) {
      HoldTest test = job.tests().get(run.test());
      return test.fuelTemperature().orElse(Operation.ROOM_TEMPERATURE);
    }
  }
}
