package holdcurve.physics.network;

import holdcurve.physics.circuit.Condition;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;

/**
 * Turns a circuit in some condition and operation into its equations. One that is kept remembers
 * how the same parts were joined before, and asks only parts that are new what they bring. Not
 * thread-safe.
 */
public final class NetworkAssembler {
  /**
   * How much of the network's fast part is kept.
   *
   * <p>{@code FULL} keeps every connection point as a node. {@code LUMPED} treats points joined by
   * an open line as one place, which is right for a hold to far less than a gauge can show and
   * costs a fraction. {@code LEDGER} is {@code FULL} with the volume that each boundary received as
   * further states.
   */
  public enum Detail {
    FULL,
    LUMPED,
    LEDGER
  }

  /** Ways in which one circuit is clamped and plumbed that are worth remembering. */
  private static final int MOST_KNOWN = 32;

  /** A structure and what it was last filled with. */
  private static final class Known {
    private final NetworkStructure structure;
    private Contributions last;

    private Known(NetworkStructure structure, Contributions last) {
      this.structure = structure;
      this.last = last;
    }
  }

  private final Detail detail;
  private final Set<String> kept;
  private final Deque<Known> known = new ArrayDeque<>();
  private final PartMemory memory = new PartMemory();

  public NetworkAssembler(Detail detail) {
    this(detail, Set.of());
  }

  private NetworkAssembler(Detail detail, Set<String> kept) {
    this.detail = detail;
    this.kept = Set.copyOf(kept);
  }

  /**
   * Lumped but for some open lines, where what flows through them matters.
   *
   * @param kept ids of the parts whose open lines are kept as resistances
   */
  public static NetworkAssembler lumpedBut(Set<String> kept) {
    return new NetworkAssembler(Detail.LUMPED, kept);
  }

  /**
   * @throws IllegalArgumentException if a leak or part names a point that isn't in the circuit
   */
  public static Network assemble(Condition condition, Operation operation, Detail detail) {
    return new NetworkAssembler(detail).assemble(condition, operation);
  }

  /**
   * Like {@link #assemble(Condition, Operation, Detail)} with this assembler's detail, faster from
   * the second time on.
   */
  public Network assemble(Condition condition, Operation operation) {
    Contributions contributions = Contributions.of(condition, operation, memory);
    Known match = match(contributions);
    match.last = contributions;
    return match.structure.build(contributions);
  }

  PartMemory memory() {
    return memory;
  }

  private Known match(Contributions contributions) {
    for (Known one : known) {
      if (one.last.isJoinedLike(contributions) && one.structure.fits(contributions)) {
        return one;
      }
    }
    Known fresh = new Known(new NetworkStructure(contributions, detail, kept), contributions);
    known.addFirst(fresh);
    if (known.size() > MOST_KNOWN) {
      known.removeLast();
    }
    return fresh;
  }
}
