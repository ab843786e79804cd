package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.Correction;
import holdcurve.casebook.RatesInUse;
import holdcurve.common.input.InputException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Keeps what the user said to the case book. */
public final class CaseNotesFile {
  /** Format and version of the file. */
  public static final String FORMAT = "holdcurve-case-book/1";

  private static final Set<String> ENTRIES =
      Set.of("format", "folders", "rates", "rates_file", "cases");
  private static final Set<String> CASE_ENTRIES = Set.of("fault", "car");

  private CaseNotesFile() {}

  /**
   * @return nothing said where there is no file
   * @throws InputException if there is one that can't be used
   */
  public static CaseNotes read(Path file) {
    if (!Files.exists(file)) {
      return CaseNotes.NONE;
    }
    JsonPlace root = JsonFiles.read(file, "holdcurve-case-book", 1);
    root.allow(ENTRIES);
    List<Path> folders = new ArrayList<>();
    root.find("folders")
        .ifPresent(
            list -> list.items("list the folders").forEach(place -> folders.add(path(place))));
    return new CaseNotes(folders, rates(root), corrections(root));
  }

  private static RatesInUse rates(JsonPlace root) {
    Optional<Path> file = root.find("rates_file").map(CaseNotesFile::path);
    return root.find("rates")
        .map(
            place ->
                switch (place.text("write shipped, own or file")) {
                  case "shipped" -> RatesInUse.SHIPPED;
                  case "own" -> RatesInUse.OWN;
                  case "file" ->
                      new RatesInUse(
                          RatesInUse.Kind.FILE,
                          Optional.of(
                              file.orElseThrow(
                                  () ->
                                      place.bad(
                                          "'rates_file' is missing", "name the file of rates"))));
                  default -> throw place.bad("unknown rates", "write shipped, own or file");
                })
        .orElse(RatesInUse.SHIPPED);
  }

  private static Map<Path, Correction> corrections(JsonPlace root) {
    Map<Path, Correction> corrections = new HashMap<>();
    root.find("cases")
        .ifPresent(
            cases -> {
              cases.requireObject("write { \"job file\": { \"fault\": ... } }");
              cases
                  .node()
                  .fieldNames()
                  .forEachRemaining(
                      name -> corrections.put(path(name, cases), correction(cases, name)));
            });
    return corrections;
  }

  private static Correction correction(JsonPlace cases, String name) {
    JsonPlace place = cases.get(name, "say something of it");
    place.requireObject("write { \"fault\": ..., \"car\": ... }");
    place.allow(CASE_ENTRIES);
    return new Correction(
        place.find("fault").map(p -> p.text("write the id of a fault")).orElse(""),
        place.find("car").map(p -> p.text("write a name or number plate")).orElse(""));
  }

  private static Path path(JsonPlace place) {
    return path(place.text("write a path"), place);
  }

  private static Path path(String name, JsonPlace place) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw place.bad("'" + name + "' is no path", "write it as your system does");
    }
  }

  /**
   * @throws InputException if it can't be written
   */
  static void write(Path file, CaseNotes notes) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    ArrayNode folders = root.putArray("folders");
    notes.folders().forEach(folder -> folders.add(folder.toString()));
    root.put("rates", notes.rates().kind().name().toLowerCase(Locale.ROOT));
    notes.rates().file().ifPresent(rates -> root.put("rates_file", rates.toString()));
    ObjectNode cases = root.putObject("cases");
    new TreeMap<>(notes.corrections())
        .forEach((job, said) -> add(cases.putObject(job.toString()), said));
    SafeFile.write(file, JsonFiles.print(root));
  }

  private static void add(ObjectNode node, Correction said) {
    if (!said.fault().isEmpty()) {
      node.put("fault", said.fault());
    }
    if (!said.car().isEmpty()) {
      node.put("car", said.car());
    }
  }
}
