package holdcurve.advice.whatif;

import holdcurve.common.message.PartName;
import holdcurve.common.number.Celsius;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** The things that can be done to a circuit, one by one. */
public final class Changes {
  private Changes() {}

  /**
   * A part replaced by a sound one: faults that sit in it alone are gone, and where its seat was
   * described as worse than a usual one, it is a usual one. The rest of its properties stays.
   */
  public static Change replace(Part part) {
    Change sound =
        Change.ofCircuit(
            PartName.of(part.id()) + " replaced by a sound one",
            circuit -> circuit.map(p -> p.id().equals(part.id()) ? asNew(p) : p));
    return new Change(
        sound.what(),
        sound.circuit(),
        member -> member.site().parts().equals(List.of(part.id())),
        sound.adds(),
        sound.fuelTemperature(),
        sound.warmth());
  }

  private static Part asNew(Part part) {
    Part sound = part;
    for (Property property : part.kind().properties()) {
      boolean wears = property.stem().equals("weep") || property == Regulator.RESEAT_DROP;
      if (wears && part.value(property) > property.standard()) {
        sound = sound.with(property, property.standard());
      }
    }
    return sound;
  }

  /**
   * A fault put right, wherever it sits or at one place.
   *
   * @param fault {@code fault} or {@code fault@site}
   */
  public static Change cure(String fault, String words) {
    Change none = Change.none();
    return new Change(
        List.of(words),
        none.circuit(),
        member -> cures(fault, member),
        none.adds(),
        none.fuelTemperature(),
        none.warmth());
  }

  static boolean cures(String fault, Hypothesis.Member member) {
    return fault.equals(member.fault().id()) || fault.equals(member.id());
  }

  /** Another value of one property [SI]. */
  public static Change set(Part part, Property property, double value) {
    return Change.ofCircuit(
        part.id() + ": " + property.meaning() + " " + shown(property.unit(), value),
        circuit -> circuit.with(part.id(), property, value));
  }

  private static String shown(Unit unit, double value) {
    if (unit == Unit.FLAG) {
      return value == 0 ? "no" : "yes";
    }
    return (PlainNumbers.number(unit.fromSi(value)) + " " + unit.symbol()).strip();
  }

  /** Another kind of hose in the same length and bore. */
  public static Change hose(Part hose, HoseKind kind) {
    return Change.ofCircuit(
        hose.id() + ": " + kind.words(),
        circuit ->
            circuit
                .with(hose.id(), Hose.COMPLIANCE, kind.compliance())
                .with(hose.id(), Hose.QUICK_CREEP, kind.creep() * Hose.QUICK_CREEP.standard())
                .with(hose.id(), Hose.SLOW_CREEP, kind.creep() * Hose.SLOW_CREEP.standard()));
  }

  /** Another filling. */
  public static Change fuel(String words, Fluid fluid) {
    return Change.ofCircuit(
        "fuel: " + words, circuit -> new Circuit(circuit.title(), fluid, circuit.parts()));
  }

  /** Fuel of another temperature at the pump stop [K]. */
  public static Change fuelTemperature(double kelvin) {
    Change none = Change.none();
    return new Change(
        List.of(String.format(Locale.ROOT, "fuel at %.0f °C", Celsius.of(kelvin))),
        none.circuit(),
        none.cures(),
        none.adds(),
        OptionalDouble.of(kelvin),
        none.warmth());
  }

  /** Fuel warmer than its surroundings at the pump stop by this much [K]; negative if colder. */
  public static Change warmth(double kelvin) {
    Change none = Change.none();
    return new Change(
        List.of(
            String.format(
                Locale.ROOT,
                "fuel %.3g K %s than its surroundings",
                Math.abs(kelvin),
                kelvin < 0 ? "colder" : "warmer")),
        none.circuit(),
        none.cures(),
        none.adds(),
        none.fuelTemperature(),
        OptionalDouble.of(kelvin));
  }

  /** A fault added. */
  public static Change add(String words, UnaryOperator<Condition> fault) {
    Change none = Change.none();
    return new Change(
        List.of(words), none.circuit(), none.cures(), fault, none.fuelTemperature(), none.warmth());
  }
}
