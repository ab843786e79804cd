package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.physics.circuit.Circuit;
import java.util.List;
import java.util.Optional;

/** Writes the faults that are known as JSON. */
public final class FaultListWriter {
  /** Format and version that such files carry. */
  public static final String FORMAT = "holdcurve-faults/1";

  private FaultListWriter() {}

  /**
   * The faults as JSON text of format {@value #FORMAT}.
   *
   * @param faults to list
   * @param circuit whose sites are listed too; empty to leave sites out
   */
  public static String json(
      List<LeakFault> faults, FaultCatalogue catalogue, Optional<Circuit> circuit) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    circuit.ifPresent(known -> root.put("circuit", known.title()));
    ArrayNode list = root.putArray("faults");
    faults.forEach(fault -> add(list.addObject(), fault, circuit));
    catalogue.problems().forEach(root.withArray("problems")::add);
    catalogue.failures().forEach(root.withArray("problems")::add);
    return JsonFiles.print(root);
  }

  private static void add(ObjectNode node, LeakFault fault, Optional<Circuit> circuit) {
    node.put("id", fault.id());
    node.put("name", fault.name());
    node.put("symptoms", fault.symptoms());
    node.put("repair", fault.repair());
    node.put("shows_in_hold", fault.showsInHold());
    ArrayNode parameters = node.putArray("parameters");
    fault.parameters().forEach(parameter -> add(parameters.addObject(), parameter));
    circuit.ifPresent(known -> addSites(node.putArray("sites"), fault, known));
  }

  private static void add(ObjectNode node, FaultParameter parameter) {
    node.put("name", parameter.name());
    node.put("unit", parameter.unit().symbol());
    node.put("usual", JsonNumbers.rounded(parameter.unit().fromSi(parameter.prior().at(0))));
    node.put("source", parameter.source());
  }

  private static void addSites(ArrayNode list, LeakFault fault, Circuit circuit) {
    FaultCatalogue.sites(fault, circuit)
        .forEach(
            site -> {
              ObjectNode node = list.addObject();
              node.put("id", fault.id() + "@" + site.id());
              node.put("where", site.where());
              site.parts().forEach(node.withArray("parts")::add);
            });
  }
}
