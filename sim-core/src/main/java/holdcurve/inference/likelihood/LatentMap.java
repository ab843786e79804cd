package holdcurve.inference.likelihood;

import holdcurve.fault.FaultParameter;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.Latents.Shared;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.flow.BentLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.network.TemperatureCourse;
import holdcurve.physics.part.Accumulator;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Seats;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.math3.special.Erf;

/** Turns latent coordinates into a circuit in some condition and a way to run each test. */
public final class LatentMap {
  /** Rooms for weeps that are kept: a step along one unknown mostly leaves the room as it is. */
  private static final int REMEMBERED = 64;

  /** Unknowns that the room for weeps depends on. */
  private static final List<Shared> ROOM =
      List.of(
          Shared.COMPLIANCE,
          Shared.AIR,
          Shared.CREEP,
          Shared.CREEP_TIME,
          Shared.QUICK_CREEP,
          Shared.SET_PRESSURE,
          Shared.RESEAT_DROP,
          Shared.DAMPER_SIZE,
          Shared.DAMPER_PRESSURE,
          Shared.DAMPER_WIDTH,
          Shared.DAMPER_STOPS);

  private static final double SOFT_AT_ONE = 0.5 * Math.log1p(Math.exp(2));

  private final JobModel data;
  private final Hypothesis hypothesis;
  private final UnknownPriors priors;
  private final Latents latents;
  private final List<FaultParameter> parameters;
  private final Circuit circuit;
  private final double statedSet;
  private final String feedHose;
  private final SoundWeep weep;
  private final Map<List<Double>, Double> rooms =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Double>, Double> eldest) {
          return size() > REMEMBERED;
        }
      };

  private int[] leakCounts;

  public LatentMap(JobModel data, Hypothesis hypothesis, UnknownPriors priors) {
    this.data = data;
    this.hypothesis = hypothesis;
    this.priors = priors;
    this.circuit = data.job().circuit();
    this.parameters = hypothesis.parameters();
    this.statedSet =
        circuit.partsOf(Regulator.KIND).stream()
            .mapToDouble(regulator -> regulator.value(Regulator.SET))
            .findFirst()
            .orElse(Double.NaN);
    this.feedHose = Hose.clampable(circuit).stream().findFirst().orElse("");
    Job job = data.job();
    double prime = job.tests().stream().mapToDouble(HoldTest::primeTime).findFirst().orElse(0);
    this.weep = new SoundWeep(circuit, job.upkeep().pass(), prime);
    this.latents =
        new Latents(
            job.tests(),
            parameters,
            idle(),
            data.testsReadBefore(),
            data.sideUnknowns(),
            priors.learned());
  }

  private Set<Shared> idle() {
    Set<Shared> idle = EnumSet.noneOf(Shared.class);
    if (circuit.partsOf(Damper.KIND).isEmpty() && circuit.partsOf(Accumulator.KIND).isEmpty()) {
      idle.addAll(List.of(Shared.DAMPER_SIZE, Shared.DAMPER_PRESSURE));
    }
    if (circuit.partsOf(Damper.KIND).isEmpty()) {
      idle.addAll(List.of(Shared.DAMPER_WIDTH, Shared.DAMPER_STOPS));
    }
    if (data.job().tests().stream().allMatch(test -> test.clamped().isEmpty())) {
      idle.addAll(List.of(Shared.FEED_CLAMP_PLACE, Shared.OTHER_CLAMP_PLACE));
    }
    if (parameters.isEmpty()) {
      idle.add(Shared.LAW_BEND);
    }
    if (data.runUp().isEmpty()) {
      idle.add(Shared.GAUGE_LAG);
    }
    return idle;
  }

  public Latents latents() {
    return latents;
  }

  public Hypothesis hypothesis() {
    return hypothesis;
  }

  /** How a test was begun and clamped. */
  public HoldSetup setup(double[] u, int test) {
    HoldTest hold = data.job().tests().get(test);
    double set = setPressure(u);
    boolean clamps = !hold.clamped().isEmpty();
    double clamp =
        clamps ? priors.clampFlow() * soft(priors.clampShare(), latents.clamp(u, test)) : 0;
    double squeeze = clamps ? priors.squeezed() * exponential(latents.squeeze(u, test)) : 0;
    return new HoldSetup(
        Math.max(
            1e3, before(u, test, set) + priors.startDeviation() * tailed(latents.start(u, test))),
        hold.primeTime(),
        0,
        data.operations().get(test).withTemperatureCourse(course(u, test)),
        hold.clamped(),
        hold.clampTime(),
        clamp / Seats.TEST_PRESSURE,
        squeeze);
  }

  /** How the fuel temperature changes in a test. */
  public TemperatureCourse course(double[] u, int test) {
    return data.temperatures().get(test).at(latents.course(u, test));
  }

  /**
   * What the circuit stands at when the pump stops, but for what differs from hold to hold [Pa
   * gauge]. A reading taken then has the gauge's own error, as those of the hold have.
   */
  private double before(double[] u, int test, double set) {
    OptionalDouble read = data.readBefore(test);
    return read.isPresent()
        ? read.getAsDouble()
            - latents.shared(u, Shared.GAUGE_OFFSET) * data.job().gauge().classUncertainty()
        : set + priors.overshoot();
  }

  /** The circuit as this hypothesis has it in one test. */
  public Condition condition(double[] u, int test) {
    return condition(sound(u), u, test);
  }

  /** The circuit without the members' faults; the same for all tests. */
  Circuit sound(double[] u) {
    Circuit varied = circuit.map(part -> unknown(part, u));
    List<Double> key = ROOM.stream().map(which -> latents.shared(u, which)).toList();
    Double room = rooms.get(key);
    if (room == null) {
      room = weep.room(varied);
      rooms.put(key, room);
    }
    return weep.within(varied, room);
  }

  /**
   * Like {@link #condition(double[], int)}.
   *
   * @param sound the result of {@link #sound} at {@code u}
   */
  public Condition condition(Circuit sound, double[] u, int test) {
    Condition condition = Condition.sound(sound);
    int k = 0;
    for (Hypothesis.Member member : hypothesis.members()) {
      double[] values = new double[member.fault().parameters().size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = parameter(u, test, k++);
      }
      condition = member.fault().apply(condition, member.site(), values);
    }
    return condition.leaks().isEmpty() ? condition : bent(condition, u);
  }

  /**
   * The leaks that one member adds to a condition of this hypothesis: members are applied in order,
   * and each adds as many as it does to a sound circuit.
   */
  List<LeakPath> leaksOf(int member, Condition condition) {
    int first = 0;
    for (int i = 0; i < member; i++) {
      first += leakCount(i);
    }
    return condition.leaks().subList(first, first + leakCount(member));
  }

  /** How many leaks a member adds. */
  public int leakCount(int member) {
    if (leakCounts == null) {
      leakCounts = hypothesis.members().stream().mapToInt(m -> m.leaks(circuit).size()).toArray();
    }
    return leakCounts[member];
  }

  /** Leaks in the field depart somewhat from the law that a fault gives them. */
  private Condition bent(Condition condition, double[] u) {
    double z = priors.lawBend() * latents.shared(u, Shared.LAW_BEND);
    double bend = Math.max(priors.leastBend(), Math.min(priors.largestBend(), z));
    List<LeakPath> leaks = new ArrayList<>(condition.leaks().size());
    for (LeakPath leak : condition.leaks()) {
      leaks.add(
          new LeakPath(leak.from(), leak.to(), new BentLaw(leak.law(), bend, Seats.TEST_PRESSURE)));
    }
    return new Condition(condition.circuit(), leaks);
  }

  /** Value of the k-th parameter in one test [SI]; {@code test} −1 for its value over all tests. */
  public double parameter(double[] u, int test, int k) {
    double value = parameters.get(k).prior().at(latents.parameter(u, k));
    return test < 0
        ? value
        : value * Math.exp(priors.testVariation() * latents.variation(u, test, k));
  }

  private Part unknown(Part part, double[] u) {
    PartKind kind = part.kind();
    if (kind == Hose.KIND) {
      return hose(part, u);
    }
    if (kind == Gauge.KIND) {
      Part needle = data.runUp().isPresent() ? lagging(part, u) : part;
      return scaled(needle, Gauge.AIR, soft(priors.airShare(), latents.shared(u, Shared.AIR)));
    }
    if (kind == CheckValve.KIND) {
      return weeping(part, CheckValve.WEEP, latents.shared(u, Shared.CHECK_VALVE_WEEP));
    }
    if (kind == Injector.KIND) {
      return weeping(part, Injector.WEEP, latents.shared(u, Shared.INJECTOR_WEEP));
    }
    if (kind == ColdStartInjector.KIND) {
      return weeping(part, ColdStartInjector.WEEP, latents.shared(u, Shared.INJECTOR_WEEP));
    }
    if (kind == Damper.KIND) {
      double spread = part.states(Damper.WIDTH) ? priors.statedSpread() : Damper.WIDTH.spread();
      double width = Math.exp(spread * latents.shared(u, Shared.DAMPER_WIDTH));
      Part stopped = scaled(scaled(part, Damper.WIDTH, width), Damper.HARDNESS, hardness(part, u));
      return damper(stopped, Damper.STROKE_VOLUME, Damper.CENTRE, priors.damperCentre(), u);
    }
    if (kind == Accumulator.KIND) {
      return damper(part, Accumulator.GAS, Accumulator.CHARGE, priors.gasCharge(), u);
    }
    return kind == Regulator.KIND ? regulator(part, u) : part;
  }

  /** A hold by itself says nothing of the needle's lag. */
  private Part lagging(Part gauge, double[] u) {
    double spread = gauge.states(Gauge.LAG) ? priors.statedSpread() : Gauge.LAG.spread();
    return scaled(gauge, Gauge.LAG, Math.exp(spread * latents.shared(u, Shared.GAUGE_LAG)));
  }

  private double hardness(Part damper, double[] u) {
    double spread =
        damper.states(Damper.HARDNESS) ? priors.statedSpread() : Damper.HARDNESS.spread();
    return Math.exp(spread * latents.shared(u, Shared.DAMPER_STOPS));
  }

  /** An undescribed damper is taken to suit the circuit that it was built for. */
  private Part damper(Part part, Property size, Property pressure, double share, double[] u) {
    double sized = part.states(size) ? priors.statedSpread() : priors.damperSize();
    double placed = part.states(pressure) ? priors.statedSpread() : priors.damperPressure();
    double usual = part.states(pressure) ? part.value(pressure) : share * statedSet();
    return scaled(part, size, Math.exp(sized * latents.shared(u, Shared.DAMPER_SIZE)))
        .with(pressure, usual * Math.exp(placed * latents.shared(u, Shared.DAMPER_PRESSURE)));
  }

  private Part hose(Part hose, double[] u) {
    double spread = hose.states(Hose.COMPLIANCE) ? priors.statedSpread() : Hose.COMPLIANCE.spread();
    Part scaled =
        scaled(hose, Hose.COMPLIANCE, Math.exp(spread * latents.shared(u, Shared.COMPLIANCE)));
    double creep = soft(Hose.SLOW_CREEP.spread(), latents.shared(u, Shared.CREEP));
    double time = Math.exp(Hose.SLOW_CREEP_TIME.spread() * latents.shared(u, Shared.CREEP_TIME));
    Shared clamp = isFeed(hose) ? Shared.FEED_CLAMP_PLACE : Shared.OTHER_CLAMP_PLACE;
    double place = Math.exp(priors.clampPlace() * latents.shared(u, clamp));
    double at = Math.min(0.95, hose.value(Hose.CLAMP_AT) * place);
    double quick = creep * soft(priors.quickCreep(), latents.shared(u, Shared.QUICK_CREEP));
    scaled = scaled(scaled, Hose.QUICK_CREEP, quick).with(Hose.CLAMP_AT, at);
    scaled = scaled(scaled, Hose.SLOW_CREEP, creep);
    scaled = scaled(scaled, Hose.QUICK_CREEP_TIME, time);
    return scaled(scaled, Hose.SLOW_CREEP_TIME, time);
  }

  private boolean isFeed(Part hose) {
    return hose.id().equals(feedHose);
  }

  private Part regulator(Part regulator, double[] u) {
    double drop = Math.exp(Regulator.RESEAT_DROP.spread() * latents.shared(u, Shared.RESEAT_DROP));
    Part changed = regulator.with(Regulator.SET, setPressure(u));
    changed = scaled(changed, Regulator.RESEAT_DROP, drop);
    return weeping(changed, Regulator.WEEP, latents.shared(u, Shared.REGULATOR_WEEP));
  }

  private Part weeping(Part part, Property weep, double z) {
    return scaled(part, weep, soft(priors.weepShare(), z));
  }

  private static Part scaled(Part part, Property property, double factor) {
    return part.with(property, part.value(property) * factor);
  }

  private double setPressure(double[] u) {
    double stated = statedSet();
    return stated * (1 + priors.setShare() * latents.shared(u, Shared.SET_PRESSURE));
  }

  double statedSet() {
    return statedSet;
  }

  /**
   * A positive factor about 1 that moves evenly with z near the middle, so that what depends on it
   * stays nearly Gaussian.
   *
   * @param share standard deviation near the middle [-]
   */
  static double soft(double share, double z) {
    double width = 0.5;
    return width * Math.log1p(Math.exp((1 + share * z) / width)) / SOFT_AT_ONE;
  }

  /** Nearly z in the middle, and farther and farther out: what may once in a while be far off. */
  private double tailed(double z) {
    double out = z / priors.startTail();
    return z * (1 + out * out);
  }

  /** A quantity of mean 1 that may be nothing, exponentially distributed. */
  static double exponential(double z) {
    return -Math.log(0.5 * Erf.erfc(z / Math.sqrt(2)));
  }

  static double factor(double perDeviation, double z) {
    return Math.exp(Math.log(perDeviation) * z);
  }
}
