package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.EthanolBlend;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Petrol;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * Writes {@code *.circuit.json}; {@link CircuitReader} reads the same circuit back. Values that
 * were left to their defaults stay unstated.
 */
public final class CircuitWriter {
  /** Takes off binary tails, and nothing that anybody could measure. */
  private static final MathContext DIGITS = new MathContext(10);

  private CircuitWriter() {}

  /** The circuit as JSON text of format {@value CircuitReader#FORMAT}. */
  public static String json(Circuit circuit) {
    ObjectNode root = JsonFiles.object();
    root.put("format", CircuitReader.FORMAT);
    root.put("title", circuit.title());
    addFluid(root.putObject("fluid"), circuit.fluid());
    ArrayNode parts = root.putArray("parts");
    circuit.parts().forEach(part -> addPart(parts.addObject(), part));
    return JsonFiles.print(root);
  }

  private static void addFluid(ObjectNode node, Fluid fluid) {
    node.put("kind", fluid.id());
    grade(fluid)
        .filter(petrol -> !petrol.equals(Petrol.summer()))
        .ifPresent(
            petrol -> {
              node.put("reid_kPa", plain(petrol.reidVapourPressure() / 1e3));
              node.put("density_kg_m3", plain(petrol.density15()));
            });
  }

  private static Optional<Petrol> grade(Fluid fluid) {
    if (fluid instanceof EthanolBlend blend) {
      return Optional.of(blend.petrol());
    }
    return fluid instanceof Petrol petrol ? Optional.of(petrol) : Optional.empty();
  }

  private static void addPart(ObjectNode node, Part part) {
    node.put("kind", part.kind().id());
    node.put("id", part.id());
    if (part.kind().ports() == Ports.ONE) {
      node.put("at", part.from());
    } else if (part.kind().ports() == Ports.TWO) {
      node.put("from", part.from());
      node.put("to", part.to());
    }
    for (Property property : part.kind().properties()) {
      if (part.states(property)) {
        addValue(node, property, part.value(property));
      }
    }
  }

  private static void addValue(ObjectNode node, Property property, double value) {
    if (property.unit() == Unit.FLAG) {
      node.put(property.fileName(), value != 0);
    } else {
      node.put(property.fileName(), plain(property.unit().fromSi(value)));
    }
  }

  /** A number without binary tails. */
  static BigDecimal plain(double value) {
    BigDecimal plain = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
