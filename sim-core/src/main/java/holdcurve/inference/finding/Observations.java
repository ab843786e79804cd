package holdcurve.inference.finding;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * What a person would see and count at a circuit whose faults are known: the other way round from
 * the evidence in this package, with the same data on what people overlook.
 */
public final class Observations {
  /** A fault, the leaks it opens, and which of its parts is the wet one. */
  public record Source(CircuitState.Member member, List<LeakPath> leaks, String wet) {}

  private final Circuit circuit;
  private final LeakPlaces places;
  private final DetectionModel detection = DetectionModel.shipped();
  private final List<Source> sources;

  /**
   * @param circuit as it really is
   */
  public Observations(Circuit circuit, List<Source> sources) {
    this.circuit = circuit;
    this.places = new LeakPlaces(circuit);
    this.sources = List.copyOf(sources);
  }

  /**
   * Every joint and part is wiped dry, the pump primed, and all are looked at.
   *
   * @param pressure meanwhile [Pa gauge]
   * @return the wet ones, or that all are dry
   */
  public List<Finding> look(double pressure, RandomGenerator random) {
    List<Finding> wet = new ArrayList<>();
    for (Source source : sources) {
      boolean outside = !LeakPlaces.wetted(source.member(), source.leaks()).isEmpty();
      double flow = LeakPlaces.flow(source.leaks(), pressure);
      if (outside && random.nextDouble() < detection.foundAtJoint(flow, 0, true)) {
        wet.add(JointLook.of(source.wet(), true).afterWiping());
      }
    }
    return wet.isEmpty() ? List.of(JointLook.allDry().afterWiping()) : wet;
  }

  /** A look into the thin hose on the regulator's diaphragm. */
  public Finding lookIntoReferenceHose(double pressure, RandomGenerator random) {
    double flow =
        sources.stream()
            .filter(source -> places.wetsReferenceHose(source.member(), source.leaks()))
            .mapToDouble(source -> LeakPlaces.flow(source.leaks(), pressure))
            .sum();
    boolean fuel = random.nextDouble() < detection.foundInHose(flow);
    return new ReferenceHoseLook(fuel, Moment.PRIMED);
  }

  /** The parts that the sources can wet from outside. */
  public Set<String> wet() {
    return sources.stream()
        .flatMap(source -> LeakPlaces.wetted(source.member(), source.leaks()).stream())
        .collect(Collectors.toSet());
  }

  /** Whether a source can put fuel into the thin hose on the regulator's diaphragm. */
  public boolean hasFuelInHose() {
    return sources.stream()
        .anyMatch(source -> places.wetsReferenceHose(source.member(), source.leaks()));
  }

  /** Whether a source makes the injectors of a part drip. */
  public boolean isDripping(String part) {
    return sources.stream()
        .anyMatch(source -> places.dripping(source.member(), source.leaks()).equals(part));
  }

  /**
   * The injectors of a part are lifted under pressure, and drops counted at all of them together.
   *
   * @param part id of the injectors, or of the cold-start injector
   * @param duration of the count [s]
   */
  public Finding countDrops(String part, double duration, double pressure, RandomGenerator random) {
    double leak =
        sources.stream()
            .filter(source -> places.dripping(source.member(), source.leaks()).equals(part))
            .mapToDouble(source -> LeakPlaces.flow(source.leaks(), pressure))
            .sum();
    Part there = circuit.part(part);
    int tips = DropLikelihood.count(there);
    double weep =
        there.value(there.kind() == Injector.KIND ? Injector.WEEP : ColdStartInjector.WEEP);
    double mean = detection.drops(leak + tips * weep, tips, duration);
    double mood = Math.exp(Math.sqrt(detection.countVariance()) * random.nextGaussian());
    return DropCount.ofAll(part, drops(mean * mood, random), duration);
  }

  private static int drops(double mean, RandomGenerator random) {
    return mean <= 0 ? 0 : new PoissonDistribution(random, mean, 1e-9, 10_000).sample();
  }
}
