package holdcurve.inference.decision;

import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.inference.likelihood.StoredFuel;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Accumulator;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a circuit's description leaves out and how much that matters: a fall of the needle means a
 * leak in proportion to what the circuit gives up for each bar.
 */
final class Assumptions {
  /** A factor on the size of a leak that is worth a sentence [-]. */
  private static final double WORTH_SAYING = 1.15;

  /** Pressure over which what a circuit gives up is compared, of the set pressure [-]. */
  private static final double LOW = 0.7;

  private record Effect(double factor, Message words) {}

  private final Circuit circuit;
  private final double set;
  private final double stored;

  Assumptions(Job job) {
    circuit = job.circuit();
    set = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    stored = stored(circuit);
  }

  private double stored(Circuit other) {
    return new StoredFuel(other).between(LOW * set, set);
  }

  /** Most telling first. */
  List<Message> sentences() {
    return Stream.of(damper(), dampersSize(), hoses(), setPressure())
        .flatMap(Optional::stream)
        .filter(effect -> effect.factor() > WORTH_SAYING)
        .sorted(Comparator.comparingDouble((Effect e) -> -e.factor()))
        .map(Effect::words)
        .toList();
  }

  private Optional<Effect> damper() {
    if (!dampers().isEmpty()) {
      return Optional.empty();
    }
    String at = circuit.partsOf(Gauge.KIND).get(0).from();
    List<Part> parts = new ArrayList<>(circuit.parts());
    parts.add(
        Part.of(Damper.KIND, "assumed-damper", at, at, Map.of())
            .with(Damper.CENTRE, UnknownPriors.usual().damperCentre() * set));
    double factor = stored(new Circuit(circuit.title(), circuit.fluid(), parts)) / stored;
    return Optional.of(
        new Effect(
            factor,
            Message.plain(
                String.format(
                    Locale.ROOT,
                    "No damper is described. If there is one, a leak is %.1f times as large.",
                    factor))));
  }

  private List<Part> dampers() {
    return Stream.concat(
            circuit.partsOf(Damper.KIND).stream(), circuit.partsOf(Accumulator.KIND).stream())
        .toList();
  }

  private Optional<Effect> dampersSize() {
    double spread = UnknownPriors.usual().damperSize();
    return dampers().stream()
        .filter(part -> !part.states(size(part)))
        .findFirst()
        .map(
            part ->
                either(
                    grown(part, size(part), Math.exp(spread)),
                    "The size of the " + PartName.of(part.id()) + " is not stated."));
  }

  private static Property size(Part damper) {
    return damper.kind() == Damper.KIND ? Damper.STROKE_VOLUME : Accumulator.GAS;
  }

  private double grown(Part part, Property property, double factor) {
    return stored(circuit.with(part.id(), property, factor * part.value(property))) / stored;
  }

  private Optional<Effect> hoses() {
    boolean unstated =
        circuit.partsOf(Hose.KIND).stream().anyMatch(hose -> !hose.states(Hose.COMPLIANCE));
    if (!unstated) {
      return Optional.empty();
    }
    double softer = Math.exp(Hose.COMPLIANCE.spread());
    Circuit soft =
        circuit.map(
            part ->
                part.kind() == Hose.KIND && !part.states(Hose.COMPLIANCE)
                    ? part.with(Hose.COMPLIANCE, softer * part.value(Hose.COMPLIANCE))
                    : part);
    return Optional.of(either(stored(soft) / stored, "How far the hoses stretch is not stated."));
  }

  private Optional<Effect> setPressure() {
    Part regulator = circuit.partsOf(Regulator.KIND).get(0);
    return regulator.states(Regulator.SET)
        ? Optional.empty()
        : Optional.of(
            new Effect(
                2,
                Message.of(
                    "No set pressure is stated. %s was assumed; the pass limit follows it.",
                    Message.pressure(set))));
  }

  private static Effect either(double factor, String what) {
    return new Effect(
        factor,
        Message.plain(
            String.format(
                Locale.ROOT, "%s So a leak may be %.1f times larger or smaller.", what, factor)));
  }
}
