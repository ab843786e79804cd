package holdcurve.file;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.Fluids;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.PartKinds;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import java.math.BigDecimal;

/**
 * The JSON Schema (draft 2020-12) of circuit files, made from the kinds of part: what the schema
 * lets pass is what {@link CircuitReader} looks for, before it asks how the parts are joined.
 */
public final class CircuitSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private CircuitSchema() {}

  public static ObjectNode schema() {
    ObjectNode schema = object();
    ObjectNode properties = NODES.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "A circuit for Holdcurve");
    schema.set("properties", properties);
    properties.set("format", NODES.objectNode().put("const", CircuitReader.FORMAT));
    properties.set("title", text("what to call it"));
    properties.set("notes", text("anything"));
    properties.set("fluid", fluid());
    properties.set("outline", outline());
    ObjectNode parts = NODES.objectNode().put("type", "array").put("minItems", 1);
    parts.set("items", anyPart());
    properties.set("parts", parts);
    schema.putArray("required").add("format");
    schema
        .putArray("oneOf")
        .add(NODES.objectNode().set("required", NODES.arrayNode().add("parts")))
        .add(NODES.objectNode().set("required", NODES.arrayNode().add("outline")));
    return schema;
  }

  private static ObjectNode fluid() {
    ObjectNode fluid = object();
    ObjectNode properties = fluid.putObject("properties");
    ObjectNode kind = properties.putObject("kind");
    Fluids.ids().forEach(kind.putArray("enum")::add);
    number(properties.putObject("reid_kPa"), 35, 105, "Reid vapour pressure");
    number(properties.putObject("density_kg_m3"), 720, 775, "density at 15 °C");
    fluid.putArray("required").add("kind");
    return fluid;
  }

  private static ObjectNode outline() {
    ObjectNode outline = object();
    outline.put("description", "a circuit in a few words, instead of its parts");
    ObjectNode properties = outline.putObject("properties");
    properties.set("cylinders", value(Injector.COUNT).put("type", "integer"));
    properties.set("pipe_length_m", value(RigidPipe.LENGTH));
    properties.set("pipe_bore_mm", value(RigidPipe.BORE));
    properties.set("set_bar", value(Regulator.SET));
    properties.putObject("damper").put("type", "boolean");
    properties.putObject("cold_start_injector").put("type", "boolean");
    outline.putArray("required").add("cylinders");
    return outline;
  }

  private static ObjectNode anyPart() {
    ObjectNode any = NODES.objectNode();
    PartKinds.all().forEach(kind -> any.withArray("oneOf").add(part(kind)));
    return any;
  }

  private static ObjectNode part(PartKind kind) {
    ObjectNode part = object();
    part.put("title", kind.title());
    ObjectNode properties = part.putObject("properties");
    properties.set("kind", NODES.objectNode().put("const", kind.id()));
    properties.set("id", text("a short name of its own"));
    properties.set("notes", text("anything"));
    part.putArray("required").add("kind").add("id");
    for (String end : ends(kind.ports())) {
      properties.set(end, text("connection point"));
      part.withArray("required").add(end);
    }
    kind.properties().forEach(property -> properties.set(property.fileName(), value(property)));
    return part;
  }

  private static String[] ends(Ports ports) {
    return switch (ports) {
      case PLACE -> new String[0];
      case ONE -> new String[] {"at"};
      case TWO -> new String[] {"from", "to"};
    };
  }

  private static ObjectNode value(Property property) {
    Unit unit = property.unit();
    if (unit == Unit.FLAG) {
      return NODES.objectNode().put("type", "boolean").put("description", property.meaning());
    }
    ObjectNode value = NODES.objectNode();
    number(value, unit.fromSi(property.least()), unit.fromSi(property.most()), property.meaning());
    return value.put("default", rounded(unit.fromSi(property.standard())));
  }

  private static void number(ObjectNode value, double least, double most, String meaning) {
    value
        .put("type", "number")
        .put("minimum", rounded(least))
        .put("maximum", rounded(most))
        .put("description", meaning);
  }

  private static BigDecimal rounded(double value) {
    return new BigDecimal(Words.number(value));
  }

  private static ObjectNode object() {
    return NODES.objectNode().put("type", "object").put("additionalProperties", false);
  }

  private static ObjectNode text(String meaning) {
    return NODES.objectNode().put("type", "string").put("minLength", 1).put("description", meaning);
  }
}
