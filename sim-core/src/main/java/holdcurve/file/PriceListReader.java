package holdcurve.file;

import holdcurve.check.InputException;
import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.whatif.PriceList;
import holdcurve.whatif.RepairOffer;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a list of repairs with prices: JSON of format {@value PriceList#FORMAT}, or CSV with the
 * columns name, part, cures, price and minutes. A price in CSV may carry its currency.
 */
public final class PriceListReader {
  private static final Set<String> ENTRIES =
      Set.of("format", "notes", "currency", "per_hour", "repairs");
  private static final Set<String> REPAIR_ENTRIES =
      Set.of("name", "part", "cures", "price", "minutes", "notes");
  private static final List<String> COLUMNS = List.of("name", "part", "cures", "price", "minutes");
  private static final Pattern PRICE = Pattern.compile("(\\D*?)\\s*(\\d+(?:[.,]\\d+)?)\\s*(\\D*)");

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
    boolean csv = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    PriceList list = csv ? reader.csv() : reader.json();
    if (list.offers().isEmpty()) {
      throw InputException.at(
          file.toString(), "", "there is no repair on the list", "add one with its price");
    }
    return list;
  }

  private PriceList json() {
    JsonPlace root = JsonFiles.read(file, "holdcurve-prices", 1);
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
    Optional<String> part = place.find("part").map(p -> p.text("write the id of a part"));
    part.ifPresent(id -> checkPart(place.path(), id));
    List<String> cures = new ArrayList<>();
    place
        .find("cures")
        .ifPresent(
            list ->
                list.items("list fault ids")
                    .forEach(p -> cures.add(checked(p.path(), p.text("write a fault id")))));
    if (part.isEmpty() && cures.isEmpty()) {
      throw place.bad(
          "the repair cures nothing", "name the part that is replaced, or the faults it cures");
    }
    return new RepairOffer(
        place.get("name", "give the repair a name").text("write a name"),
        part,
        cures,
        place.get("price", "state its price").number(0, MOST, ""),
        place.find("minutes").map(p -> p.number(0, MOST_MINUTES, " min")).orElse(0.0));
  }

  private void checkPart(String place, String id) {
    List<String> known = circuit.parts().stream().map(Part::id).toList();
    if (!known.contains(id)) {
      throw InputException.at(
          file.toString(),
          place,
          "there is no part '" + id + "' in this circuit",
          "use one of " + Words.list(known));
    }
  }

  private String checked(String place, String fault) {
    if (!faults.contains(fault.split("@", 2)[0])) {
      throw InputException.at(
          file.toString(),
          place,
          "there is no fault '" + fault + "'",
          "use one of " + Words.list(faults.stream().sorted().toList()));
    }
    return fault;
  }

  private PriceList csv() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .build();
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      var parser = format.parse(text);
      if (!Set.copyOf(parser.getHeaderNames()).containsAll(Set.of("name", "price"))) {
        throw InputException.at(
            file.toString(),
            "line 1",
            "found the columns " + Words.list(parser.getHeaderNames()),
            "name them " + String.join(",", COLUMNS));
      }
      List<RepairOffer> offers = new ArrayList<>();
      for (CSVRecord row : parser) {
        offers.add(offer(row, "line " + parser.getCurrentLineNumber()));
      }
      return new PriceList(currency, 0, offers);
    } catch (IOException e) {
      throw InputException.because(
          file.toString(), "", "the file can't be read", "check its name and permissions", e);
    }
  }

  private RepairOffer offer(CSVRecord row, String place) {
    Optional<String> part = cell(row, "part");
    part.ifPresent(id -> checkPart(place, id));
    List<String> cures = new ArrayList<>();
    cell(row, "cures")
        .ifPresent(all -> List.of(all.split("[;| ]+")).forEach(f -> cures.add(checked(place, f))));
    if (part.isEmpty() && cures.isEmpty()) {
      throw InputException.at(
          file.toString(),
          place,
          "the repair cures nothing",
          "name the part that is replaced, or the faults it cures");
    }
    return new RepairOffer(
        cell(row, "name").orElse(part.orElse("repair")),
        part,
        cures,
        number(row, "price", place, MOST),
        cell(row, "minutes").isEmpty() ? 0 : number(row, "minutes", place, MOST_MINUTES));
  }

  private static Optional<String> cell(CSVRecord row, String column) {
    return row.isSet(column) && !row.get(column).isBlank()
        ? Optional.of(row.get(column))
        : Optional.empty();
  }

  private double number(CSVRecord row, String column, String place, double most) {
    String text = cell(row, column).orElse("");
    Matcher matcher = PRICE.matcher(text);
    if (matcher.matches()) {
      String sign = (matcher.group(1) + matcher.group(3)).strip();
      currency = column.equals("price") && !sign.isEmpty() ? sign : currency;
      double value = Double.parseDouble(matcher.group(2).replace(',', '.'));
      if (value <= most) {
        return value;
      }
    }
    throw InputException.at(
        file.toString(),
        place,
        "'" + text + "' is no " + column,
        "give a number from 0 to " + Words.number(most));
  }
}
