package holdcurve.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairOffer;
import java.nio.file.Path;

/** Writes a list of repairs with prices, for {@link PriceListReader} and for other jobs. */
public final class PriceListWriter {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private PriceListWriter() {}

  /** The list as JSON text of format {@value PriceList#FORMAT}. */
  public static String json(PriceList list) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", PriceList.FORMAT);
    if (!list.currency().isEmpty()) {
      root.put("currency", list.currency());
    }
    root.put("per_hour", list.perHour());
    list.offers().forEach(offer -> put(root.withArray("repairs").addObject(), offer));
    return JsonFiles.print(root);
  }

  private static void put(ObjectNode node, RepairOffer offer) {
    node.put("name", offer.name());
    offer.part().ifPresent(part -> node.put("part", part));
    offer.cures().forEach(node.withArray("cures")::add);
    if (offer.cures().isEmpty()) {
      node.remove("cures");
    }
    node.put("price", offer.price());
    node.put("minutes", offer.minutes());
  }

  /**
   * Writes the list in one step, with a backup of what stood there.
   *
   * @throws holdcurve.common.input.InputException if the file can't be written
   */
  public static void write(Path file, PriceList list) {
    SafeFile.write(file, json(list));
  }
}
