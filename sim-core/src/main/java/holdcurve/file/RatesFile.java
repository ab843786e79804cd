package holdcurve.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.casebook.LearnedRates;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Fault rates that a garage learned, for another to use. Says nothing of any car. */
public final class RatesFile {
  /** Format and version of the file. */
  public static final String FORMAT = "holdcurve-fault-rates/1";

  private static final Set<String> ENTRIES = Set.of("format", "notes", "cases", "rates");
  private static final Set<String> RATE_ENTRIES = Set.of("rate", "cases");

  private RatesFile() {}

  /** The rates as JSON text of format {@value #FORMAT}. */
  public static String json(LearnedRates learned) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    root.put(
        "notes",
        "Share of circuits that have each fault, from confirmed cases and the shipped rates.");
    root.put("cases", learned.cases());
    ObjectNode rates = root.putObject("rates");
    learned
        .rates()
        .forEach(
            rate -> {
              ObjectNode one = rates.putObject(rate.fault());
              one.put("rate", JsonNumbers.rounded(rate.learned()));
              one.put("cases", rate.cases());
            });
    return JsonFiles.print(root);
  }

  /**
   * Fault id → rate [-].
   *
   * @throws holdcurve.common.input.InputException if the file can't be used
   */
  public static Map<String, Double> read(Path file) {
    JsonPlace root = JsonFiles.read(file, "holdcurve-fault-rates", 1);
    root.allow(ENTRIES);
    JsonPlace list = root.get("rates", "write { \"fault id\": { \"rate\": 0.02 } }");
    list.requireObject("write { \"fault id\": { \"rate\": 0.02 } }");
    Map<String, Double> rates = new LinkedHashMap<>();
    list.node()
        .fieldNames()
        .forEachRemaining(
            id -> {
              JsonPlace one = list.get(id, "give its rate");
              one.requireObject("write { \"rate\": 0.02 }");
              one.allow(RATE_ENTRIES);
              rates.put(id, one.get("rate", "give its rate").number(0, 0.5, ""));
            });
    return rates;
  }
}
