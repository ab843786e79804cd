package holdcurve.file;

import holdcurve.check.InputException;
import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;
import holdcurve.circuit.Ports;
import holdcurve.part.CheckValve;
import holdcurve.part.Gauge;
import holdcurve.part.Regulator;
import holdcurve.part.Tank;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What must be true of a circuit as a whole before it can be simulated. */
final class CircuitCheck {
  private CircuitCheck() {}

  static void check(Circuit circuit, String file) {
    needOne(circuit, file, Tank.KIND);
    needOne(circuit, file, CheckValve.KIND);
    needOne(circuit, file, Regulator.KIND);
    needOne(circuit, file, Gauge.KIND);
    if (circuit.partsOf(Gauge.KIND).size() > 1) {
      throw InputException.at(file, "parts", "there are two gauges", "keep the one that was read");
    }
    checkEnds(circuit, file);
    checkValues(circuit, file);
    PressurisedSide.check(circuit, file);
  }

  /** What is in range by itself and can't be together. */
  private static void checkValues(Circuit circuit, String file) {
    for (Part part : circuit.partsOf(Regulator.KIND)) {
      double set = part.value(Regulator.SET);
      double drop = part.value(Regulator.RESEAT_DROP);
      if (drop >= set) {
        throw InputException.at(
            file,
            "parts[%d].reseat_drop_bar".formatted(circuit.parts().indexOf(part)),
            "%s would shut %s bar below its %s bar, so never".formatted(part, bar(drop), bar(set)),
            "give less than " + bar(set) + " bar");
      }
    }
  }

  private static String bar(double pascal) {
    return new BigDecimal(pascal / 1e5)
        .round(new MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static void needOne(Circuit circuit, String file, PartKind kind) {
    if (circuit.partsOf(kind).isEmpty()) {
      throw InputException.at(
          file,
          "parts",
          "the circuit has no " + kind.title().toLowerCase(java.util.Locale.ROOT),
          "add a part of kind '" + kind.id() + "'");
    }
  }

  /** A line that ends at a point named nowhere else is most likely a slip of the pen. */
  private static void checkEnds(Circuit circuit, String file) {
    Map<String, Integer> mentions = new HashMap<>();
    for (Part part : circuit.parts()) {
      if (part.kind().ports() != Ports.PLACE) {
        mentions.merge(part.from(), 1, Integer::sum);
        if (part.kind().ports() == Ports.TWO) {
          mentions.merge(part.to(), 1, Integer::sum);
        }
      }
    }
    for (int i = 0; i < circuit.parts().size(); i++) {
      Part part = circuit.parts().get(i);
      if (part.kind().ports() == Ports.TWO && part.from().equals(part.to())) {
        throw InputException.at(
            file,
            "parts[" + i + "]",
            part + " begins and ends at '" + part.to() + "'",
            "join its ends to two connection points");
      }
      for (String point : List.of(part.from(), part.to())) {
        if (part.kind().ports() != Ports.PLACE
            && !circuit.isBoundary(point)
            && mentions.get(point) < 2) {
          throw InputException.at(
              file,
              "parts[" + i + "]",
              part + " ends at '" + point + "', which no other part names",
              "join it to a connection point of another part");
        }
      }
    }
  }
}
