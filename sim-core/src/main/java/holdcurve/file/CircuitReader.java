package holdcurve.file;

import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.part.PartKinds;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code *.circuit.json}. */
public final class CircuitReader {
  /** Kind and version that circuit files carry. */
  public static final String FORMAT = "holdcurve-circuit/1";

  private static final Set<String> ENTRIES =
      Set.of("format", "title", "notes", "fluid", "parts", "outline");
  private static final Set<String> FLUID_ENTRIES = Set.of("kind", "reid_kPa", "density_kg_m3");

  private static final int MOST_PARTS = 300;

  private CircuitReader() {}

  /**
   * @throws InputException if the file can't be used, saying where and why
   */
  public static Circuit read(Path file) {
    JsonPlace root = JsonFiles.read(file, "holdcurve-circuit", 1);
    return read(root, file.getFileName().toString());
  }

  /**
   * Reads the text of a circuit file that stands elsewhere, such as in the program itself.
   *
   * @param name where it comes from, for messages
   * @throws InputException if it can't be used, saying where and why
   */
  public static Circuit read(String name, String text) {
    return read(JsonFiles.read(name, text, "holdcurve-circuit", 1), name);
  }

  static Circuit read(JsonPlace root, String untitled) {
    root.allow(ENTRIES);
    String title = root.find("title").map(place -> place.text("give it a name")).orElse(untitled);
    Circuit circuit = new Circuit(title, readFluid(root), parts(root));
    CircuitCheck.check(circuit, root);
    return circuit;
  }

  private static List<Part> parts(JsonPlace root) {
    if (root.find("outline").isEmpty()) {
      return readParts(
          root.get("parts", "list the parts, or write an \"outline\": { \"cylinders\": 6 }"));
    }
    if (root.find("parts").isPresent()) {
      throw root.bad("there are both 'parts' and an 'outline'", "keep the one that is right");
    }
    return OutlineReader.parts(root.get("outline", "write { \"cylinders\": 6 }"));
  }

  private static Fluid readFluid(JsonPlace root) {
    return root.find("fluid").map(CircuitReader::fluid).orElseGet(Petrol::summer);
  }

  private static Fluid fluid(JsonPlace place) {
    String remedy = "one of " + Words.list(Fluids.ids());
    place.requireObject("write { \"kind\": \"petrol\" }");
    place.allow(FLUID_ENTRIES);
    JsonPlace kind = place.get("kind", remedy);
    double reid = place.find("reid_kPa").map(p -> p.number(35, 105, " kPa")).orElse(60.0) * 1e3;
    double density =
        place
            .find("density_kg_m3")
            .map(p -> p.number(720, 775, " kg/m³"))
            .orElse(Petrol.USUAL_DENSITY_15);
    return Fluids.byId(kind.text(remedy), Petrol.of(reid, density))
        .orElseThrow(() -> kind.bad("unknown fluid " + kind.shown(), "use " + remedy));
  }

  private static List<Part> readParts(JsonPlace list) {
    List<Part> parts = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    InputErrors troubles = new InputErrors();
    for (JsonPlace place : list.items("list the parts as [ { \"kind\": ... }, ... ]")) {
      Optional<Part> read = troubles.attempt(() -> readPart(place));
      read.ifPresent(parts::add);
      if (read.isPresent() && !ids.add(read.get().id())) {
        troubles.add(
            place.bad(
                "a second part is called '" + read.get().id() + "'", "give each part its own id"));
      }
    }
    troubles.refuse();
    if (parts.size() > MOST_PARTS) {
      throw list.bad(
          "the circuit has " + parts.size() + " parts", "keep it to " + MOST_PARTS + " at most");
    }
    return parts;
  }

  private static Part readPart(JsonPlace place) {
    place.requireObject("describe a part as { \"kind\": ..., \"id\": ... }");
    List<String> kinds = PartKinds.all().stream().map(PartKind::id).toList();
    String remedy = "use one of " + Words.list(kinds);
    JsonPlace kindPlace = place.get("kind", remedy);
    PartKind kind =
        PartKinds.byId(kindPlace.text(remedy))
            .orElseThrow(() -> kindPlace.bad("unknown kind of part " + kindPlace.shown(), remedy));
    String id = place.get("id", "give the part a short name of its own").text("write a short name");
    String[] ends = readEnds(place, kind, id);
    return Part.of(kind, id, ends[0], ends[1], PartProperties.read(place, kind));
  }

  private static String[] readEnds(JsonPlace place, PartKind kind, String id) {
    if (kind.ports() == Ports.PLACE) {
      return new String[] {id, id};
    }
    if (kind.ports() == Ports.ONE) {
      String at = end(place, "at", kind);
      return new String[] {at, at};
    }
    return new String[] {end(place, "from", kind), end(place, "to", kind)};
  }

  private static String end(JsonPlace place, String name, PartKind kind) {
    String remedy =
        "name the connection point of the " + kind.id() + ", the same word as at the part it joins";
    return place.get(name, remedy).text(remedy);
  }
}
