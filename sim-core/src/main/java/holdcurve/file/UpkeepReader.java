package holdcurve.file;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Upkeep;
import holdcurve.record.limit.PassLimit;
import holdcurve.record.refit.RefitList;
import holdcurve.record.refit.RefitStep;
import holdcurve.record.refit.RefitTick;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the entries {@code repairs}, {@code pass} and {@code refit} of a job. */
final class UpkeepReader {
  /** What it reads. */
  static final Set<String> ENTRIES = Set.of("repairs", "pass", "refit");

  private static final Set<String> REPAIR_ENTRIES =
      Set.of("date", "part", "fault", "after_test", "note");
  private static final Set<String> PASS_ENTRIES = Set.of("least_bar", "after_min");
  private static final Set<String> STEP_ENTRIES = Set.of("id", "text", "caution", "done", "by");

  private final JsonPlace root;
  private final Circuit circuit;
  private final List<String> testIds;

  private UpkeepReader(JsonPlace root, Circuit circuit, List<HoldTest> tests) {
    this.root = root;
    this.circuit = circuit;
    this.testIds = tests.stream().map(HoldTest::id).toList();
  }

  static Upkeep read(JsonPlace root, Circuit circuit, List<HoldTest> tests) {
    UpkeepReader reader = new UpkeepReader(root, circuit, tests);
    Upkeep none = Upkeep.none(circuit);
    Optional<PassLimit> pass = root.find("pass").map(place -> pass(place, none.pass()));
    Optional<RefitList> refit = root.find("refit").map(UpkeepReader::refit);
    return new Upkeep(
        reader.repairs(),
        pass.orElse(none.pass()),
        pass.isPresent(),
        refit.orElse(none.refit()),
        refit.isPresent());
  }

  private List<Repair> repairs() {
    List<Repair> repairs = new ArrayList<>();
    root.find("repairs")
        .ifPresent(
            list ->
                list.items("list the repairs as [ { \"date\": ..., \"part\": ... }, ... ]")
                    .forEach(place -> repairs.add(repair(place))));
    return repairs;
  }

  private Repair repair(JsonPlace place) {
    place.requireObject(
        "describe a repair as { \"date\": \"2026-04-11\", \"part\": ..., \"note\": ... }");
    place.allow(REPAIR_ENTRIES);
    List<String> parts = circuit.parts().stream().map(Part::id).toList();
    return new Repair(
        date(place.get("date", "say when it was done, as 2026-04-11")),
        oneOf(place, "part", parts, "part"),
        text(place, "fault", "write the id of a fault, as the command 'faults' lists it"),
        oneOf(place, "after_test", testIds, "test"),
        text(place, "note", "write a text"));
  }

  private static String oneOf(JsonPlace place, String entry, List<String> known, String what) {
    Optional<JsonPlace> given = place.find(entry);
    String id = given.map(p -> p.text("write the id of a " + what)).orElse("");
    if (given.isPresent() && !known.contains(id)) {
      throw given
          .get()
          .bad("there is no " + what + " '" + id + "'", "use one of " + Words.list(known));
    }
    return id;
  }

  private static String text(JsonPlace place, String entry, String remedy) {
    return place.find(entry).map(p -> p.text(remedy)).orElse("");
  }

  static LocalDate date(JsonPlace place) {
    String remedy = "write year, month and day as 2026-04-11";
    String text = place.text(remedy);
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw place.bad("'" + text + "' is no date", remedy);
    }
  }

  private static PassLimit pass(JsonPlace place, PassLimit usual) {
    place.requireObject("write { \"least_bar\": 1.7, \"after_min\": 5 }");
    place.allow(PASS_ENTRIES);
    return new PassLimit(
        place.find("least_bar").map(p -> p.number(0.1, 10, " bar") * 1e5).orElse(usual.pressure()),
        place.find("after_min").map(p -> p.number(0.5, 1440, " min") * 60).orElse(usual.time()));
  }

  private static RefitList refit(JsonPlace list) {
    List<RefitStep> steps = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (JsonPlace place :
        list.items("list the steps as [ { \"id\": ..., \"text\": ... }, ... ]")) {
      RefitStep step = step(place);
      if (!ids.add(step.id())) {
        throw place.bad("a second step is called '" + step.id() + "'", "give each its own id");
      }
      steps.add(step);
    }
    return new RefitList(steps);
  }

  /** A step of the shipped list may leave out its text and caution. */
  private static RefitStep step(JsonPlace place) {
    place.requireObject("describe a step as { \"id\": ..., \"text\": ... }");
    place.allow(STEP_ENTRIES);
    String id = place.get("id", "give the step a short name").text("write a short name");
    Optional<RefitStep> shipped = RefitList.shipped().step(id);
    String text =
        place
            .find("text")
            .map(p -> p.text("say what to do"))
            .or(() -> shipped.map(RefitStep::text))
            .orElseThrow(() -> place.bad("'text' is missing", "say what to do at this step"));
    String caution =
        place.find("caution").isPresent() || place.find("text").isPresent()
            ? caution(place)
            : shipped.map(RefitStep::caution).orElse("");
    return new RefitStep(id, text, caution, tick(place));
  }

  /** May be written as an empty text. */
  private static String caution(JsonPlace place) {
    return place
        .find("caution")
        .filter(p -> !p.node().isTextual() || !p.node().textValue().isBlank())
        .map(p -> p.text("write a text"))
        .orElse("");
  }

  private static Optional<RefitTick> tick(JsonPlace place) {
    Optional<JsonPlace> done = place.find("done");
    Optional<JsonPlace> by = place.find("by");
    if (done.isPresent() != by.isPresent()) {
      throw place.bad(
          "only one of 'done' and 'by' is there", "give the date and the initials, or neither");
    }
    String remedy = "write the initials, at most " + RefitTick.LONGEST + " characters";
    return done.map(
        date -> {
          String initials = by.orElseThrow().text(remedy);
          if (!RefitTick.isName(initials)) {
            throw by.orElseThrow().bad("'" + initials + "' is too long", remedy);
          }
          return new RefitTick(date(date), initials);
        });
  }
}
