package holdcurve.inference.likelihood;

import holdcurve.fault.FaultParameter;
import holdcurve.inference.finding.FindingLikelihood.Reach;
import holdcurve.inference.prior.LearnedUnknowns;
import holdcurve.physics.network.TemperatureCourse;
import holdcurve.record.job.HoldTest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Which standard-normal coordinate stands for what, and which tests it touches. Shared unknowns
 * come first, then the members' parameters, then those of each test.
 */
public final class Latents {
  /** Unknowns that all tests of a job share. */
  public enum Shared {
    COMPLIANCE(true, Reach.RUNNING),
    AIR(true, Reach.RUNNING),
    CREEP(true, Reach.ALL),
    CREEP_TIME(true, Reach.ALL),
    QUICK_CREEP(true, Reach.ALL),
    CHECK_VALVE_WEEP(true, Reach.ALL),
    REGULATOR_WEEP(true, Reach.ALL),
    INJECTOR_WEEP(true, Reach.ALL),
    SET_PRESSURE(true, Reach.SETTLED),
    RESEAT_DROP(true, Reach.SETTLED),
    FEED_CLAMP_PLACE(true, Reach.ALL),
    OTHER_CLAMP_PLACE(true, Reach.ALL),
    DAMPER_SIZE(true, Reach.RUNNING),
    DAMPER_PRESSURE(true, Reach.RUNNING),
    DAMPER_WIDTH(true, Reach.RUNNING),
    DAMPER_STOPS(true, Reach.RUNNING),
    LAW_BEND(true, Reach.ALL),
    GAUGE_LAG(true, Reach.RUNNING),
    GAUGE_OFFSET(false, Reach.SETTLED),
    READING_SCALE(false, Reach.ALL),
    MODEL_ERROR(false, Reach.ALL);

    /** Whether it changes the curve, rather than how readings scatter about it. */
    final boolean changesCurve;

    private final Reach reach;

    Shared(boolean changesCurve, Reach reach) {
      this.changesCurve = changesCurve;
      this.reach = reach;
    }
  }

  private static final int[] SCALES = {
    Shared.READING_SCALE.ordinal(), Shared.MODEL_ERROR.ordinal()
  };

  private final List<BitSet> touched = new ArrayList<>();
  private final int tests;
  private final int firstParameter;
  private final List<FaultParameter> parameters;
  private final int[] start;
  private final int[] course;
  private final int[] clamp;
  private final int[] squeeze;
  private final int[][] variation;
  private final int[] curve;
  private final int firstOfSides;

  /** Prior of each shared unknown, in standard deviations of what is usual. */
  private final double[] middle = new double[Shared.values().length];

  private final double[] deviation = new double[Shared.values().length];

  /**
   * @param idle shared unknowns that stand for nothing in this job
   * @param readBefore tests whose pressure was read before the pump stop, with the gauge's error
   * @param sides how many unknowns side evidence has of its own; they come last
   * @param learned what earlier jobs of the same car taught
   */
  Latents(
      List<HoldTest> jobTests,
      List<FaultParameter> parameters,
      Set<Shared> idle,
      BitSet readBefore,
      int sides,
      LearnedUnknowns learned) {
    Arrays.fill(deviation, 1);
    for (LearnedUnknowns.Unknown unknown : LearnedUnknowns.Unknown.values()) {
      int place = Shared.valueOf(unknown.name()).ordinal();
      middle[place] = learned.of(unknown).middle();
      deviation[place] = learned.of(unknown).deviation();
    }
    tests = jobTests.size();
    this.parameters = parameters;
    for (Shared shared : Shared.values()) {
      BitSet others = shared == Shared.GAUGE_OFFSET ? readBefore : new BitSet();
      addFor(shared.changesCurve && !idle.contains(shared) ? all() : others);
    }
    firstParameter = touched.size();
    parameters.forEach(parameter -> addFor(all()));
    start = new int[tests];
    course = new int[tests];
    clamp = new int[tests];
    squeeze = new int[tests];
    variation = new int[tests][parameters.size()];
    for (int i = 0; i < tests; i++) {
      addTest(i, jobTests.get(i));
    }
    firstOfSides = touched.size();
    IntStream.range(0, sides).forEach(k -> addFor(new BitSet()));
    curve = IntStream.range(0, dimension()).filter(j -> !changesScale(j)).toArray();
  }

  private void addTest(int i, HoldTest test) {
    start[i] = addFor(only(i));
    course[i] = addFor(only(i));
    for (int k = 1; k < TemperatureCourse.SHAPES; k++) {
      addFor(only(i));
    }
    clamp[i] = test.clamped().isEmpty() ? -1 : addFor(only(i));
    squeeze[i] = test.clamped().isEmpty() ? -1 : addFor(only(i));
    for (int k = 0; k < parameters.size(); k++) {
      boolean varies = tests > 1 && parameters.get(k).variesBetweenTests();
      variation[i][k] = varies ? addFor(only(i)) : -1;
    }
  }

  private int addFor(BitSet testsTouched) {
    touched.add(testsTouched);
    return touched.size() - 1;
  }

  private BitSet all() {
    BitSet set = new BitSet();
    set.set(0, tests);
    return set;
  }

  private static BitSet only(int test) {
    BitSet set = new BitSet();
    set.set(test);
    return set;
  }

  /**
   * Where each coordinate stands among those of another hypothesis about the same job.
   *
   * @param from those of the other
   * @param member for each parameter here the like parameter there, or −1 for none
   * @return −1 for a coordinate that the other hasn't
   */
  public int[] placesIn(Latents from, int[] member) {
    int[] places = new int[dimension()];
    Arrays.fill(places, -1);
    for (int j = 0; j < firstParameter; j++) {
      places[j] = touched.get(j).equals(from.touched.get(j)) ? j : -1;
    }
    for (int k = 0; k < member.length; k++) {
      places[firstParameter + k] = member[k] < 0 ? -1 : from.firstParameter + member[k];
    }
    for (int i = 0; i < tests; i++) {
      places[start[i]] = from.start[i];
      for (int k = 0; k < TemperatureCourse.SHAPES; k++) {
        places[course[i] + k] = from.course[i] + k;
      }
      if (clamp[i] >= 0) {
        places[clamp[i]] = from.clamp[i];
        places[squeeze[i]] = from.squeeze[i];
      }
      for (int k = 0; k < member.length; k++) {
        if (member[k] >= 0 && variation[i][k] >= 0) {
          places[variation[i][k]] = from.variation[i][member[k]];
        }
      }
    }
    for (int j = firstOfSides; j < places.length; j++) {
      places[j] = from.firstOfSides + j - firstOfSides;
    }
    return places;
  }

  /** The two coordinates that change how readings scatter, and not the curve. */
  public int[] scales() {
    return SCALES.clone();
  }

  /** All coordinates but the scales. */
  public int[] curve() {
    return curve.clone();
  }

  /** Values of {@link #curve()} in {@code u}. */
  public double[] pickCurve(double[] u) {
    return pick(u, curve);
  }

  public static double[] pick(double[] u, int[] which) {
    double[] values = new double[which.length];
    for (int k = 0; k < which.length; k++) {
      values[k] = u[which[k]];
    }
    return values;
  }

  public static void put(double[] u, int[] which, double[] values) {
    for (int k = 0; k < which.length; k++) {
      u[which[k]] = values[k];
    }
  }

  public int dimension() {
    return touched.size();
  }

  /** Whether coordinate {@code j} changes the curve of a test. */
  boolean changesCurve(int j, int test) {
    return touched.get(j).get(test);
  }

  /** Whether coordinate {@code j} belongs to one test alone. */
  boolean isOfOneTest(int j) {
    return j >= firstParameter + parameters.size() && j < firstOfSides;
  }

  /** Whether coordinate {@code j} changes how residuals are whitened. */
  public boolean changesScale(int j) {
    return j == Shared.READING_SCALE.ordinal() || j == Shared.MODEL_ERROR.ordinal();
  }

  /** Whether coordinate {@code j} changes the circuit in a test, not only how the test is run. */
  boolean changesCircuit(int j, int test) {
    return changesCurve(j, test)
        && j != Shared.GAUGE_OFFSET.ordinal()
        && j != start[test]
        && (j < course[test] || j >= course[test] + TemperatureCourse.SHAPES)
        && j != clamp[test]
        && j != squeeze[test];
  }

  /** Whether coordinate {@code j} changes the circuit in all tests alike. */
  boolean changesSoundCircuit(int j) {
    return j < firstParameter && Shared.values()[j].changesCurve;
  }

  /** A shared unknown, in standard deviations of what is usual whatever was learned [-]. */
  double shared(double[] u, Shared which) {
    int place = which.ordinal();
    return middle[place] + deviation[place] * u[place];
  }

  /**
   * What is believed of an unknown that stays with a car, in standard deviations of what is usual.
   *
   * @param u where its posterior lies
   * @param coordinateDeviation standard deviation of its coordinate there, by its place
   */
  public LearnedUnknowns.Normal believed(
      double[] u, LearnedUnknowns.Unknown unknown, IntToDoubleFunction coordinateDeviation) {
    Shared which = Shared.valueOf(unknown.name());
    int place = which.ordinal();
    return new LearnedUnknowns.Normal(
        shared(u, which), deviation[place] * coordinateDeviation.applyAsDouble(place));
  }

  /** Coordinate of the k-th parameter of the members, before its variation between tests. */
  public double parameter(double[] u, int k) {
    return u[firstParameter + k];
  }

  public int parameterIndex(int k) {
    return firstParameter + k;
  }

  /** Where the unknowns begin that only side evidence has. */
  public int firstOfSides() {
    return firstOfSides;
  }

  /** Whether coordinate {@code j} can matter to evidence that depends on so much of a circuit. */
  boolean matters(int j, Reach of) {
    return j >= firstParameter || Shared.values()[j].reach.compareTo(of) >= 0;
  }

  /** Number of the coordinates that come first and belong to no single test. */
  public int commonCount() {
    return firstParameter + parameters.size();
  }

  public int startIndex(int test) {
    return start[test];
  }

  public double start(double[] u, int test) {
    return u[start[test]];
  }

  /** Course of the fuel temperature in a test, one coordinate a shape. */
  public double[] course(double[] u, int test) {
    return Arrays.copyOfRange(u, course[test], course[test] + TemperatureCourse.SHAPES);
  }

  /**
   * Log prior density of the unknowns that side evidence has of its own, constants left out [nat].
   */
  double logPriorOfSides(double[] u) {
    double sum = 0;
    for (int j = firstOfSides; j < u.length; j++) {
      sum -= 0.5 * u[j] * u[j];
    }
    return sum;
  }

  /** Clamp quality of a clamped test. */
  public double clamp(double[] u, int test) {
    return u[clamp[test]];
  }

  /** Fuel that the clamps of a clamped test push aside. */
  public double squeeze(double[] u, int test) {
    return u[squeeze[test]];
  }

  /**
   * Residual of the k-th parameter in one test, in standard deviations of that variation; 0 where
   * it doesn't vary.
   */
  public double variation(double[] u, int test, int k) {
    return variation[test][k] < 0 ? 0 : u[variation[test][k]];
  }
}
