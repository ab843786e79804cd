package holdcurve.inference.hypothesis;

import holdcurve.fault.FaultParameter;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.Node;
import holdcurve.physics.network.Operation;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Pump;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which faults a job's tests cannot tell apart, read off the network: two leaks that lead from the
 * same trapped fuel to the same kind of place in every test give the gauge the same thing to show,
 * but for the shape of their laws.
 */
public final class Identifiability {
  private static final String OUTSIDE = "outside";
  private static final Set<PartKind> FEEDING = Set.of(Pump.KIND, Filter.KIND);

  private final Circuit circuit;
  private final List<Set<String>> clampings;
  private final Map<Set<String>, Network> networks = new HashMap<>();

  public Identifiability(Job job) {
    circuit = job.circuit();
    Set<Set<String>> done = new LinkedHashSet<>();
    done.add(Set.of());
    job.tests().stream().map(HoldTest::clamped).forEach(done::add);
    clampings = List.copyOf(done);
  }

  /** Whether two faults drain the same fuel the same way in all tests done. */
  public boolean drainAlike(Hypothesis.Member a, Hypothesis.Member b) {
    return sizedAlike(a, b) && clampings.stream().allMatch(c -> drain(a, c).equals(drain(b, c)));
  }

  /** Whether two faults would drain the same fuel the same way with these hoses clamped. */
  public boolean drainAlike(Hypothesis.Member a, Hypothesis.Member b, Set<String> clamped) {
    return sizedAlike(a, b) && drain(a, clamped).equals(drain(b, clamped));
  }

  /**
   * Whether two faults starve the rail alike: what a pump pushes and what a filter lets through is
   * one to a gauge behind both.
   */
  public boolean starveAlike(Hypothesis.Member a, Hypothesis.Member b) {
    return feeds(a) && feeds(b);
  }

  private boolean feeds(Hypothesis.Member member) {
    return member.leaks(circuit).isEmpty()
        && !member.site().parts().isEmpty()
        && member.site().parts().stream()
            .map(circuit::part)
            .allMatch(part -> FEEDING.contains(part.kind()));
  }

  /**
   * A leak and a valve that shuts too low are told apart by the shape of the curve; what loses no
   * fuel drains none.
   */
  private boolean sizedAlike(Hypothesis.Member a, Hypothesis.Member b) {
    if (a.leaks(circuit).isEmpty() || b.leaks(circuit).isEmpty()) {
      return false;
    }
    FaultParameter first = a.fault().parameters().get(0);
    FaultParameter second = b.fault().parameters().get(0);
    return first.unit() == second.unit();
  }

  /**
   * Hoses one of whose clamping would tell two faults apart, in circuit order; empty if none would.
   */
  public List<String> dividingHoses(Hypothesis.Member a, Hypothesis.Member b) {
    return Hose.clampable(circuit).stream()
        .filter(hose -> !drain(a, Set.of(hose)).equals(drain(b, Set.of(hose))))
        .toList();
  }

  /** The clampings of the job's tests, each once; first none. */
  public List<Set<String>> clampings() {
    return clampings;
  }

  /** Whether a fault drains the fuel that the gauge reads, with these hoses clamped. */
  public boolean reachesGauge(Hypothesis.Member member, Set<String> clamped) {
    Network network = network(clamped);
    Node gauge = gauge(network);
    return member.leaks(circuit).stream()
        .anyMatch(leak -> network.layout().node(leak.from()).equals(gauge));
  }

  /** Parts between two points of the gauge's fuel, with these hoses clamped, in circuit order. */
  public List<String> joined(Set<String> clamped) {
    Network network = network(clamped);
    Node gauge = gauge(network);
    return circuit.parts().stream()
        .filter(part -> !part.from().equals(part.to()) && !clamped.contains(part.id()))
        .filter(part -> network.layout().node(part.from()).equals(gauge))
        .filter(part -> network.layout().node(part.to()).equals(gauge))
        .map(Part::id)
        .toList();
  }

  private Node gauge(Network network) {
    return network.layout().node(circuit.partsOf(Gauge.KIND).get(0).from());
  }

  /**
   * The fuel that a fault drains in the test with the fewest clamps: ids of the parts it stands in.
   */
  public List<String> drained(Hypothesis.Member member) {
    Network network = network(Set.of());
    Optional<Node> node =
        member.leaks(circuit).stream().findFirst().map(l -> network.layout().node(l.from()));
    List<String> parts = new ArrayList<>();
    for (Part part : circuit.parts()) {
      boolean inside =
          node.isPresent()
              && !node.get().boundary()
              && network.layout().node(part.from()).equals(node.get())
              && network.layout().node(part.to()).equals(node.get());
      if (inside) {
        parts.add(part.id());
      }
    }
    return parts;
  }

  private Set<String> drain(Hypothesis.Member member, Set<String> clamped) {
    Network network = network(clamped);
    Set<String> paths = new TreeSet<>();
    for (LeakPath leak : member.leaks(circuit)) {
      paths.add(place(network, leak.from()) + " to " + place(network, leak.to()));
    }
    return paths;
  }

  private static String place(Network network, String point) {
    Node node = network.layout().node(point);
    return node.boundary() ? OUTSIDE : node.name();
  }

  private Network network(Set<String> clamped) {
    return networks.computeIfAbsent(
        clamped,
        key ->
            NetworkAssembler.assemble(
                Condition.sound(circuit),
                Operation.holding().withClamps(key, 0),
                NetworkAssembler.Detail.LUMPED));
  }
}
