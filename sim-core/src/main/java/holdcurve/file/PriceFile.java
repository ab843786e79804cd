package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.advice.whatif.PriceList;
import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * Sets one repair in a list of prices, which is begun if there is none. Every other entry stays as
 * it stands; the old file stays beside it as {@code name~}.
 */
public final class PriceFile {
  private PriceFile() {}

  /**
   * @param settings currency and price of an hour, as far as stated
   * @param offer the repair; in place of one of the same name
   * @param circuit whose parts it may name
   * @param faults ids of the faults it may name
   * @throws InputException if list or repair can't be used
   */
  public static PriceList set(
      Path file, StatedEntry settings, StatedEntry offer, Circuit circuit, Set<String> faults) {
    if (PriceListReader.isTable(file)) {
      throw InputException.at(
          file.toString(),
          "",
          "a table of prices is kept with a spreadsheet",
          "edit it there, or name a list that ends in .json");
    }
    ObjectNode root = standing(file, circuit, faults);
    root.setAll(settings.node());
    ArrayNode repairs = root.withArray("repairs");
    int at = index(repairs, offer.node().path("name"));
    if (at < repairs.size()) {
      ((ObjectNode) repairs.get(at)).setAll(offer.node());
    } else {
      repairs.add(offer.node());
    }
    JsonPlace place = new JsonPlace(file.toString(), "", root, JsonLines.NONE);
    JsonPlace stated = offer.in(settings.in(place, ""), "repairs[" + at + "]");
    PriceList list = PriceListReader.check(file, stated, circuit, faults);
    SafeFile.write(file, JsonFiles.print(root));
    return list;
  }

  private static ObjectNode standing(Path file, Circuit circuit, Set<String> faults) {
    if (Files.exists(file)) {
      PriceListReader.read(file, circuit, faults);
      return (ObjectNode) JsonFiles.read(file, "holdcurve-prices", 1).node();
    }
    ObjectNode fresh = JsonFiles.object();
    fresh.put("format", PriceList.FORMAT);
    return fresh;
  }

  private static int index(ArrayNode repairs, JsonNode name) {
    int i = 0;
    while (i < repairs.size() && !repairs.get(i).path("name").equals(name)) {
      i++;
    }
    return i;
  }
}
