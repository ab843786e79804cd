package holdcurve.soak;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.part.Accumulator;
import holdcurve.physics.part.CircuitOutline;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Joint;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Circuits that a file could describe, however unlikely: every property anywhere in the range that
 * its reader accepts, the ends of the range included, lines cut in pieces, parts doubled or
 * missing.
 */
final class RandomCircuit {
  /** How often a property keeps its default: a file states few. */
  private static final double UNSTATED = 0.4;

  /** How often a stated property stands at an end of its range. */
  private static final double AT_AN_END = 0.15;

  private final Random random;

  RandomCircuit(Random random) {
    this.random = random;
  }

  Circuit next() {
    List<Part> parts = new ArrayList<>();
    for (Part part : outline()) {
      if (!leftOut(part.kind())) {
        parts.addAll(pieces(part));
      }
    }
    for (PartKind kind : List.of(Damper.KIND, Accumulator.KIND, Joint.KIND)) {
      for (int i = random.nextInt(3); i > 0; i--) {
        String at = parts.get(1 + random.nextInt(parts.size() - 1)).from();
        parts.add(Part.of(kind, "extra-" + kind.id() + "-" + i, at, at, Map.of()));
      }
    }
    Circuit circuit = new Circuit("random", fluid(), parts).map(this::drawn);
    return shutting(circuit);
  }

  private List<Part> outline() {
    return new CircuitOutline(
            1 + random.nextInt(16),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            random.nextBoolean(),
            random.nextBoolean())
        .parts();
  }

  /** What a circuit can do without, as its parts are joined. */
  private boolean leftOut(PartKind kind) {
    return (kind == Joint.KIND || kind.id().equals("rail")) && random.nextInt(5) == 0;
  }

  /** A line in one to four pieces, of either sort, or a filter where a line was. */
  private List<Part> pieces(Part part) {
    boolean line = part.kind() == Hose.KIND || part.kind() == RigidPipe.KIND;
    int count = line ? 1 + random.nextInt(4) : 1;
    List<Part> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String from = i == 0 ? part.from() : part.id() + "-joint-" + i;
      String to = i == count - 1 ? part.to() : part.id() + "-joint-" + (i + 1);
      String id = i == 0 ? part.id() : part.id() + "-" + (i + 1);
      pieces.add(Part.of(i == 0 ? part.kind() : other(), id, from, to, Map.of()));
    }
    return pieces;
  }

  private PartKind other() {
    return List.of(Hose.KIND, RigidPipe.KIND, Filter.KIND).get(random.nextInt(3));
  }

  private Fluid fluid() {
    Petrol grade = Petrol.of(within(35e3, 105e3), within(720, 775));
    List<String> ids = Fluids.ids();
    return Fluids.byId(ids.get(random.nextInt(ids.size())), grade).orElseThrow();
  }

  private Part drawn(Part part) {
    Part drawn = part;
    for (Property property : part.kind().properties()) {
      if (random.nextDouble() > UNSTATED) {
        drawn = drawn.with(property, value(property));
      }
    }
    return drawn;
  }

  private double value(Property property) {
    if (property.unit() == Unit.FLAG) {
      return random.nextInt(2);
    }
    if (random.nextDouble() < AT_AN_END) {
      return random.nextBoolean() ? property.least() : property.most();
    }
    double value =
        property.least() > 0
            ? property.least() * Math.pow(property.most() / property.least(), random.nextDouble())
            : within(property.least(), property.most());
    return property.unit() == Unit.NONE && property.least() == 1 ? Math.rint(value) : value;
  }

  private double within(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  /** A regulator shuts above no pressure at all; a file that says otherwise is refused. */
  private Circuit shutting(Circuit circuit) {
    return circuit.map(
        part ->
            part.kind() == Regulator.KIND
                    && part.value(Regulator.RESEAT_DROP) >= part.value(Regulator.SET)
                ? part.with(Regulator.RESEAT_DROP, 0.9 * part.value(Regulator.SET))
                : part);
  }
}
