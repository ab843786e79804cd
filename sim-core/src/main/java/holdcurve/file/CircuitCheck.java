package holdcurve.file;

import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Tank;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;

/** What must be true of a circuit as a whole before it can be simulated. */
final class CircuitCheck {
  private final Circuit circuit;
  private final JsonPlace root;
  private final InputErrors troubles = new InputErrors();

  private CircuitCheck(Circuit circuit, JsonPlace root) {
    this.circuit = circuit;
    this.root = root;
  }

  /**
   * @param root the file that describes it
   * @throws InputException that says all that is wrong
   */
  static void check(Circuit circuit, JsonPlace root) {
    new CircuitCheck(circuit, root).check();
  }

  /** What one check finds, the next ones would only find again. */
  private void check() {
    List.of(Tank.KIND, CheckValve.KIND, Regulator.KIND, Gauge.KIND).forEach(this::needOne);
    if (circuit.partsOf(Gauge.KIND).size() > 1) {
      troubles.add(bad("there are two gauges", "keep the one that was read"));
    }
    checkValues();
    troubles.refuse();
    new LooseEnds(circuit).find((part, what, remedy) -> troubles.add(at(part, what, remedy)));
    troubles.refuse();
    new PressurisedSide(circuit).find((part, what, remedy) -> troubles.add(at(part, what, remedy)));
    troubles.refuse();
  }

  private InputException bad(String problem, String remedy) {
    return root.find("parts").orElse(root).bad(problem, remedy);
  }

  /** The parts of an outline stand nowhere in the file. */
  private InputException at(Part part, String problem, String remedy) {
    int index = circuit.parts().indexOf(part);
    return root.find("parts")
        .map(list -> list.item(index).bad(problem, remedy))
        .orElseGet(() -> root.bad(problem, remedy));
  }

  /** What is in range by itself and can't be together. */
  private void checkValues() {
    for (Part part : circuit.partsOf(Regulator.KIND)) {
      double set = part.value(Regulator.SET);
      double drop = part.value(Regulator.RESEAT_DROP);
      if (drop >= set) {
        troubles.add(
            at(
                part,
                "%s would shut %s bar below its %s bar, so never"
                    .formatted(part, bar(drop), bar(set)),
                "give less than " + bar(set) + " bar as its reseat_drop_bar"));
      }
    }
  }

  private static String bar(double pascal) {
    return new BigDecimal(pascal / 1e5)
        .round(new MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  private void needOne(PartKind kind) {
    if (circuit.partsOf(kind).isEmpty()) {
      troubles.add(
          bad(
              "the circuit has no " + kind.title().toLowerCase(Locale.ROOT),
              "add a part of kind '" + kind.id() + "'"));
    }
  }
}
