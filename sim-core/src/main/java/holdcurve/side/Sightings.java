package holdcurve.side;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import holdcurve.finding.DropCount;
import holdcurve.finding.Finding;
import holdcurve.finding.JointLook;
import holdcurve.finding.Moment;
import holdcurve.finding.ReferenceHoseLook;
import holdcurve.part.ColdStartInjector;
import holdcurve.part.Injector;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * What a person would see and count at a circuit whose faults are known: the other way round from
 * the evidence in this package, with the same data on what people overlook.
 */
public final class Sightings {
  /** A fault, the leaks it opens, and which of its parts is the wet one. */
  public record Source(Truth.Member member, List<LeakPath> leaks, String wet) {}

  private final Circuit circuit;
  private final Places places;
  private final Seeing seeing = Seeing.shipped();
  private final List<Source> sources;

  /**
   * @param circuit as it really is
   */
  public Sightings(Circuit circuit, List<Source> sources) {
    this.circuit = circuit;
    this.places = new Places(circuit);
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
      boolean outside = !Places.wetted(source.member(), source.leaks()).isEmpty();
      double flow = Places.flow(source.leaks(), pressure);
      if (outside && random.nextDouble() < seeing.foundAtJoint(flow, 0, true)) {
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
            .mapToDouble(source -> Places.flow(source.leaks(), pressure))
            .sum();
    boolean fuel = random.nextDouble() < seeing.foundInHose(flow);
    return new ReferenceHoseLook(fuel, Moment.PRIMED);
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
            .mapToDouble(source -> Places.flow(source.leaks(), pressure))
            .sum();
    Part there = circuit.part(part);
    int tips = DropEvidence.count(there);
    double weep =
        there.value(there.kind() == Injector.KIND ? Injector.WEEP : ColdStartInjector.WEEP);
    double mean = seeing.drops(leak + tips * weep, tips, duration);
    double mood = Math.exp(Math.sqrt(seeing.countVariance()) * random.nextGaussian());
    return DropCount.ofAll(part, drops(mean * mood, random), duration);
  }

  private static int drops(double mean, RandomGenerator random) {
    return mean <= 0 ? 0 : new PoissonDistribution(random, mean, 1e-9, 10_000).sample();
  }
}
