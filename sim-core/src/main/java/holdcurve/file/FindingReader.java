package holdcurve.file;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.HoldTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Reads the entry {@code findings} of a job. */
final class FindingReader {
  static final String ENTRY = "findings";
  static final String JOINT = "joint";
  static final String DROPS = "drops";
  static final String REFERENCE_HOSE = "reference-hose";
  static final String DRAW_OFF = "draw-off";
  static final String DROP_TEST = "drop-test";

  private static final List<String> KINDS =
      List.of(JOINT, DROPS, REFERENCE_HOSE, DRAW_OFF, DROP_TEST);
  private static final Set<String> JOINT_ENTRIES =
      Set.of("kind", "part", "end", "seen", "wiped", "test", "pressure_bar", "date");
  private static final Set<String> DROP_ENTRIES =
      Set.of("kind", "part", "number", "drops", "minutes", "test", "pressure_bar", "date");
  private static final Set<String> HOSE_ENTRIES =
      Set.of("kind", "fuel", "test", "pressure_bar", "date");
  private static final Set<String> DRAW_OFF_ENTRIES =
      Set.of("kind", "drawn_mL", "from_bar", "to_bar", "seconds", "clamped", "date");

  private static final Set<String> DROP_TEST_ENTRIES =
      Set.of("kind", "part", "low", "high", "stays_open", "watched", "date");

  /** Time in which a few millilitres are let out at the tee: common practice, no source [s]. */
  private static final double USUAL_DRAWING = 10;

  private final Circuit circuit;
  private final List<HoldTest> tests;

  private FindingReader(Circuit circuit, List<HoldTest> tests) {
    this.circuit = circuit;
    this.tests = tests;
  }

  static List<Finding> read(JsonPlace root, Circuit circuit, List<HoldTest> tests) {
    FindingReader reader = new FindingReader(circuit, tests);
    List<Finding> findings = new ArrayList<>();
    root.find(ENTRY)
        .ifPresent(
            list ->
                list.items("list the findings as [ { \"kind\": \"joint\", ... }, ... ]")
                    .forEach(place -> findings.add(reader.finding(place))));
    return findings;
  }

  private Finding finding(JsonPlace place) {
    String remedy = "use one of " + Words.list(KINDS);
    place.requireObject("describe a finding as { \"kind\": \"joint\", ... }");
    JsonPlace kind = place.get("kind", remedy);
    switch (kind.text(remedy)) {
      case JOINT:
        return joint(place);
      case DROPS:
        return drops(place);
      case REFERENCE_HOSE:
        return referenceHose(place);
      case DRAW_OFF:
        return drawOff(place);
      case DROP_TEST:
        return dropTest(place);
      default:
        throw kind.bad("unknown kind of finding " + kind.shown(), remedy);
    }
  }

  private JointLook joint(JsonPlace place) {
    place.allow(JOINT_ENTRIES);
    String remedy = "write \"wet\" or \"dry\"";
    JsonPlace seen = place.get("seen", remedy);
    String word = seen.text(remedy);
    if (!word.equals("wet") && !word.equals("dry")) {
      throw seen.bad("found " + seen.shown(), remedy);
    }
    boolean wet = word.equals("wet");
    Optional<JsonPlace> part = place.find("part");
    if (wet && part.isEmpty()) {
      throw place.bad("'part' is missing", "name the part that was wet");
    }
    if (part.isEmpty() && place.find("end").isPresent()) {
      throw place.bad("'part' is missing", "name the part whose end was looked at");
    }
    Optional<Part> known = part.map(this::part);
    return new JointLook(
        known.map(Part::id), known.flatMap(p -> end(place, p)), wet, wiped(place), moment(place));
  }

  /** Files from before this could be said mean a look at joints as they were. */
  private static boolean wiped(JsonPlace place) {
    String remedy = "write true if it was wiped dry and primed again before the look, else false";
    return place.find("wiped").map(p -> p.flag(remedy)).orElse(false);
  }

  private Part part(JsonPlace place) {
    String id = place.text("write the id of a part");
    List<String> ids = circuit.parts().stream().map(Part::id).toList();
    if (!ids.contains(id)) {
      throw place.bad("there is no part '" + id + "'", "use one of " + Words.list(ids));
    }
    return circuit.part(id);
  }

  private static Optional<String> end(JsonPlace place, Part part) {
    Optional<JsonPlace> given = place.find("end");
    Optional<String> end = given.map(p -> p.text("write the name of a connection point"));
    if (end.isPresent() && !end.get().equals(part.from()) && !end.get().equals(part.to())) {
      throw given
          .get()
          .bad(
              "'" + part.id() + "' has no end at '" + end.get() + "'",
              "write '" + part.from() + "' or '" + part.to() + "'");
    }
    return end;
  }

  private DropCount drops(JsonPlace place) {
    place.allow(DROP_ENTRIES);
    Part part = injectors(place);
    Optional<JsonPlace> number = place.find("number");
    return new DropCount(
        part.id(),
        number.isEmpty() ? OptionalInt.empty() : OptionalInt.of(number(number.get(), part)),
        whole(place.get("drops", "write how many drops fell"), 0, 10_000),
        60 * place.get("minutes", "write over how many minutes").number(0.1, 600, " min"),
        moment(place));
  }

  private Part injectors(JsonPlace place) {
    List<String> known =
        circuit.parts().stream()
            .filter(p -> p.kind() == Injector.KIND || p.kind() == ColdStartInjector.KIND)
            .map(Part::id)
            .toList();
    String remedy = "name the injectors: " + Words.list(known);
    JsonPlace named = place.get("part", remedy);
    if (!known.contains(named.text(remedy))) {
      throw named.bad("found " + named.shown(), remedy);
    }
    return circuit.part(named.text(remedy));
  }

  private static int number(JsonPlace place, Part part) {
    int count = part.kind() == Injector.KIND ? (int) Math.round(part.value(Injector.COUNT)) : 1;
    return whole(place, 1, count);
  }

  private static int whole(JsonPlace place, int least, int most) {
    double value = place.number(least, most, "");
    if (value != Math.rint(value)) {
      throw place.bad("found " + place.shown(), "write a whole number");
    }
    return (int) value;
  }

  private ReferenceHoseLook referenceHose(JsonPlace place) {
    place.allow(HOSE_ENTRIES);
    String remedy = "write true if there was fuel in it, else false";
    return new ReferenceHoseLook(place.get("fuel", remedy).flag(remedy), moment(place));
  }

  private DrawOff drawOff(JsonPlace place) {
    place.allow(DRAW_OFF_ENTRIES);
    double drawn = place.get("drawn_mL", "write how much was drawn off").number(0.05, 500, " mL");
    double from = place.get("from_bar", "write the pressure before").number(0.05, 10, " bar");
    JsonPlace after = place.get("to_bar", "write the pressure after");
    double to = after.number(0, 10, " bar");
    if (to >= from) {
      throw after.bad(
          after.shown() + " bar is not below the " + Words.number(from) + " bar before",
          "name the higher one as the pressure before");
    }
    return new DrawOff(
        drawn * 1e-6,
        from * 1e5,
        to * 1e5,
        place.find("seconds").map(p -> p.number(1, 600, " s")).orElse(USUAL_DRAWING),
        JobReader.clampedHoses(place, circuit),
        date(place));
  }

  private DropTestResult dropTest(JsonPlace place) {
    place.allow(DROP_TEST_ENTRIES);
    List<String> open = names(place, "stays_open");
    String remedy = "write true if the needle was watched after the firings, else false";
    Optional<JsonPlace> stated = place.find("watched");
    boolean watched = stated.map(p -> p.flag(remedy)).orElse(!open.isEmpty());
    if (!watched && !open.isEmpty()) {
      throw stated.get().bad("an injector that stays open was named", "write true");
    }
    return new DropTestResult(
        injectors(place).id(),
        names(place, "low"),
        names(place, "high"),
        open,
        watched,
        date(place));
  }

  private static List<String> names(JsonPlace place, String entry) {
    String remedy = "list the numbers of injectors as [ \"3\" ]";
    return place
        .find(entry)
        .map(list -> list.items(remedy).stream().map(item -> item.text(remedy)).toList())
        .orElse(List.of());
  }

  private Moment moment(JsonPlace place) {
    Optional<JsonPlace> test = place.find("test");
    List<String> ids = tests.stream().map(HoldTest::id).toList();
    Optional<String> id = test.map(p -> p.text("write the id of a hold test"));
    if (id.isPresent() && !ids.contains(id.get())) {
      throw test.get().bad("there is no test '" + id.get() + "'", "use one of " + Words.list(ids));
    }
    OptionalDouble pressure =
        place
            .find("pressure_bar")
            .map(p -> OptionalDouble.of(p.number(0.05, 10, " bar") * 1e5))
            .orElseGet(OptionalDouble::empty);
    return new Moment(id, pressure, date(place));
  }

  private static Optional<LocalDate> date(JsonPlace place) {
    return place.find("date").map(UpkeepReader::date);
  }
}
