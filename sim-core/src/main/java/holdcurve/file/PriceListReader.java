package holdcurve.file;

import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairOffer;
import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.record.log.SheetTable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a list of repairs with prices: JSON of format {@value PriceList#FORMAT}, or CSV with the
 * columns name, part, cures, price and minutes. A price in CSV may carry its currency.
 */
public final class PriceListReader {
  private static final Set<String> ENTRIES =
      Set.of("format", "notes", "currency", "per_hour", "repairs");
  private static final Set<String> REPAIR_ENTRIES =
      Set.of("name", "part", "cures", "price", "minutes", "notes");
  private static final Set<String> SETTINGS =
      Set.of("format", "title", "notes", "currency", "per_hour");
  private static final Set<String> COLUMNS =
      Set.of("name", "part", "cures", "price", "minutes", "notes");
  private static final Pattern PRICE =
      Pattern.compile("([^\\d.,+−-]{0,12})(\\d{1,12}(?:[.,]\\d{1,12})?)([^\\d.,+−-]{0,12})");

  /** Every set of repairs is weighed, and their number doubles with each. */
  private static final int MOST_OFFERS = 12;

  private static final double MOST = 1e6;
  private static final double MOST_MINUTES = 6000;

  private final Path file;
  private final Circuit circuit;
  private final Set<String> faults;
  private String currency = "";

  private PriceListReader(Path file, Circuit circuit, Set<String> faults) {
    this.file = file;
    this.circuit = circuit;
    this.faults = faults;
  }

  /**
   * @param circuit whose parts it may name
   * @param faults ids of the faults it may name
   * @throws InputException if it can't be used
   */
  public static PriceList read(Path file, Circuit circuit, Set<String> faults) {
    PriceListReader reader = new PriceListReader(file, circuit, faults);
    PriceList list =
        isTable(file) ? reader.csv() : reader.json(JsonFiles.read(file, "holdcurve-prices", 1));
    requireSome(file, list);
    return list;
  }

  /** Checks what is to stand in a file, as {@link #read} would then do. */
  static PriceList check(Path file, JsonPlace root, Circuit circuit, Set<String> faults) {
    PriceList list = new PriceListReader(file, circuit, faults).json(root);
    requireSome(file, list);
    return list;
  }

  static boolean isTable(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private static void requireSome(Path file, PriceList list) {
    if (list.offers().size() > MOST_OFFERS) {
      throw InputException.at(
          file.toString(),
          "",
          "there are " + list.offers().size() + " repairs on the list",
          "keep those that come into question, at most " + MOST_OFFERS);
    }
    if (list.offers().isEmpty()) {
      throw InputException.at(
          file.toString(), "", "there is no repair on the list", "add one with its price");
    }
  }

  private PriceList json(JsonPlace root) {
    root.allow(ENTRIES);
    List<RepairOffer> offers = new ArrayList<>();
    for (JsonPlace place : root.get("repairs", "list the repairs").items("list the repairs")) {
      offers.add(offer(place));
    }
    return new PriceList(
        root.find("currency").map(p -> p.text("write a sign or a name")).orElse(""),
        root.find("per_hour").map(p -> p.number(0, MOST, "")).orElse(0.0),
        offers);
  }

  private RepairOffer offer(JsonPlace place) {
    place.requireObject("write { \"name\": ..., \"part\": ..., \"price\": ..., \"minutes\": ... }");
    place.allow(REPAIR_ENTRIES);
    Optional<String> part = place.find("part").map(p -> part(p, p.text("write the id of a part")));
    List<String> cures = new ArrayList<>();
    place
        .find("cures")
        .ifPresent(
            list ->
                list.items("list fault ids")
                    .forEach(p -> cures.add(fault(p, p.text("write a fault id")))));
    requireCure(place, part, cures);
    return new RepairOffer(
        place.get("name", "give the repair a name").text("write a name"),
        part,
        cures,
        place.get("price", "state its price").number(0, MOST, ""),
        place.find("minutes").map(p -> p.number(0, MOST_MINUTES, " min")).orElse(0.0));
  }

  private static void requireCure(JsonPlace place, Optional<String> part, List<String> cures) {
    if (part.isEmpty() && cures.isEmpty()) {
      throw place.bad(
          "the repair cures nothing", "name the part that is replaced, or the faults it cures");
    }
  }

  private String part(JsonPlace place, String id) {
    List<String> known = circuit.parts().stream().map(Part::id).toList();
    if (!known.contains(id)) {
      throw place.bad(
          "there is no part '" + id + "' in this circuit", "use one of " + Words.list(known));
    }
    return id;
  }

  private String fault(JsonPlace place, String fault) {
    if (!faults.contains(fault.split("@", 2)[0])) {
      throw place.bad(
          "there is no fault '" + fault + "'",
          "use one of " + Words.list(faults.stream().sorted().toList()));
    }
    return fault;
  }

  private PriceList csv() {
    SheetTable table = SheetTable.read(file, "price");
    SheetFields top = SheetFields.of(file.toString(), "", table.settings());
    top.allow(SETTINGS);
    TableFormat.require(top, "holdcurve-prices", 1);
    top.find("currency").ifPresent(p -> currency = p.text("write a sign or a name"));
    List<RepairOffer> offers = new ArrayList<>();
    for (SheetTable.Row row : table.rows()) {
      SheetFields fields = SheetFields.of(file.toString(), "line " + row.line(), row.cells());
      fields.allow(COLUMNS);
      offers.add(offer(fields, row.cells().get("price")));
    }
    return new PriceList(currency, top.number("per_hour", 0, MOST, "", 0), offers);
  }

  private RepairOffer offer(SheetFields row, SheetTable.Cell written) {
    Optional<String> part = word(row, "part").map(id -> part(row.get("part", ""), id));
    List<String> cures = new ArrayList<>();
    word(row, "cures")
        .ifPresent(
            all ->
                List.of(all.split("[;| ]+"))
                    .forEach(f -> cures.add(fault(row.get("cures", ""), f))));
    requireCure(row.whole(), part, cures);
    JsonPlace price = row.get("price", "state its price");
    return new RepairOffer(
        word(row, "name").orElse(part.orElse("repair")),
        part,
        cures,
        price(price, written.text()),
        row.number("minutes", 0, MOST_MINUTES, " min", 0));
  }

  private static Optional<String> word(SheetFields row, String column) {
    return row.find(column).map(p -> row.word(column, "write a text"));
  }

  /** A price with or without its currency. */
  private double price(JsonPlace place, String text) {
    Matcher matcher = PRICE.matcher(text);
    String remedy = "write it as 12.50, with or without its currency, 0 to 1000000";
    if (!matcher.matches()) {
      throw place.bad("'" + text + "' is no price", remedy);
    }
    if (matcher.group(2).matches("\\d+[.,]\\d{3,}")) {
      throw place.bad("'" + text + "' can be read in two ways", "write it as 1250 or 1.25");
    }
    setCurrency(place, (matcher.group(1) + matcher.group(3)).strip());
    double value = Double.parseDouble(matcher.group(2).replace(',', '.'));
    if (value > MOST) {
      throw place.bad("'" + text + "' is out of range", remedy);
    }
    return value;
  }

  private void setCurrency(JsonPlace place, String sign) {
    if (!sign.isEmpty() && !currency.isEmpty() && !sign.equals(currency)) {
      throw place.bad(
          "the price is in '" + sign + "', another one in '" + currency + "'",
          "give all prices in one currency");
    }
    currency = sign.isEmpty() ? currency : sign;
  }
}
