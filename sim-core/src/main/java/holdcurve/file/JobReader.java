package holdcurve.file;

import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import holdcurve.common.message.Message;
import holdcurve.common.number.Celsius;
import holdcurve.common.text.Days;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Hose;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Upkeep;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.LogImport;
import holdcurve.record.log.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads {@code *.job.json} and the circuit and logs that it names, relative to its own folder. */
public final class JobReader {
  private static final Set<String> ENTRIES = entries();
  private static final Set<String> GAUGE_ENTRIES =
      Set.of("range_bar", "class_percent", "resolution_bar");
  private static final Set<String> TEST_ENTRIES =
      Set.of("id", "clamped", "clamp_time_s", "prime_s", "fuel_temp_C", "log", "date", "notes");
  private static final Pattern FIGURES = Pattern.compile("[0-9]{1,4}([-./ ]+[0-9]{1,4}){1,2}\\.?");
  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  /** Nobody needs to hear that the usual form was understood as such. */
  private static final Set<String> ROUTINE =
      Set.of("Columns separated by ',', decimal point.", "Times in seconds.", "Pressures in bar.");

  private static final int MOST_TESTS = 100;
  private static final int MOST_READINGS = 1_000_000;

  private final Path file;
  private final boolean unfinished;
  private final List<Message> understood = new ArrayList<>();

  /** Scales that gauges come with [Pa]. */
  private static final double[] LONGER_SCALES = {6e5, 10e5, 16e5, 25e5, 40e5};

  private JobReader(Path file, boolean unfinished) {
    this.file = file;
    this.unfinished = unfinished;
  }

  private static Set<String> entries() {
    Set<String> entries =
        new HashSet<>(Set.of("format", "title", "notes", "circuit", "gauge", "tests", "priors"));
    entries.addAll(UpkeepReader.ENTRIES);
    entries.add(FindingReader.ENTRY);
    return Set.copyOf(entries);
  }

  /**
   * @throws InputException if the job, its circuit or one of its logs can't be used
   */
  public static Job read(Path file) {
    return new JobReader(file, false).read();
  }

  /**
   * Reads a job that is still being worked on: it may have no test yet, and a test may have no
   * readings, or fewer than a ranking needs.
   *
   * @throws InputException if the job, its circuit or one of its logs can't be used
   */
  public static Job readUnfinished(Path file) {
    return new JobReader(file, true).read();
  }

  /** A job of one hold without clamps, made from a circuit and a log alone. */
  public static Job of(Path circuitFile, Path logFile) {
    Circuit circuit = CircuitReader.read(circuitFile);
    LogImport log = GaugeLogReader.read(logFile);
    HoldTest test = HoldTest.of("hold", Set.of(), log.log());
    List<Message> understood = new ArrayList<>(log.understood());
    UnitDoubt.of(log, circuit).ifPresent(understood::add);
    GaugeSpec gauge = gaugeFor(log.log(), understood);
    return new Job(circuit.title(), circuit, gauge, List.of(test), Map.of(), understood);
  }

  /** The usual gauge, or one with a longer scale where readings lie beyond that. */
  private static GaugeSpec gaugeFor(GaugeLog log, List<Message> understood) {
    GaugeSpec usual = GaugeSpec.usual();
    double most = log.hold().stream().mapToDouble(Reading::pressure).max().orElse(0);
    double range = usual.range();
    for (double longer : LONGER_SCALES) {
      range = most > range ? longer : range;
    }
    if (range == usual.range()) {
      return usual;
    }
    understood.add(
        Message.of(
            "Gauge taken as one to %s, since the log goes beyond %s.",
            Message.round(range), Message.round(usual.range())));
    return new GaugeSpec(range, usual.accuracyClass(), usual.resolution());
  }

  /** Reads what is to stand in a job file, as {@link #readUnfinished(Path)} would then do. */
  static Job readUnfinished(Path file, JsonPlace root) {
    return new JobReader(file, true).read(root);
  }

  private Job read() {
    List<String> said = new ArrayList<>();
    JsonPlace root = JsonFiles.read(file, "holdcurve-job", 1, said);
    understood.addAll(Message.plain(said));
    return read(root);
  }

  private Job read(JsonPlace root) {
    InputErrors troubles = new InputErrors();
    troubles.attempt(
        () -> {
          root.allow(ENTRIES);
          return root;
        });
    Optional<String> title =
        troubles.attempt(
            () -> root.get("title", "give the job a title").text("write what you call it"));
    Optional<GaugeSpec> gauge =
        troubles.attempt(
            () -> root.find("gauge").map(JobReader::gauge).orElseGet(GaugeSpec::usual));
    Optional<Map<String, Double>> priors = troubles.attempt(() -> readPriors(root));
    Optional<Circuit> circuit = troubles.attempt(() -> readCircuit(root));
    Optional<List<HoldTest>> tests =
        circuit.flatMap(
            of -> troubles.attempt(() -> readTests(root.get("tests", "list the hold tests"), of)));
    Optional<List<Finding>> findings =
        tests.flatMap(
            of -> troubles.attempt(() -> FindingReader.read(root, circuit.orElseThrow(), of)));
    Optional<Upkeep> upkeep =
        tests.flatMap(
            of -> troubles.attempt(() -> UpkeepReader.read(root, circuit.orElseThrow(), of)));
    troubles.refuse();
    Circuit car = circuit.orElseThrow();
    List<HoldTest> holds = tests.orElseThrow();
    holds.forEach(test -> sayPegged(test, gauge.orElseThrow()));
    return new Job(
        title.orElseThrow(),
        car,
        gauge.orElseThrow(),
        holds,
        findings.orElseThrow(),
        priors.orElseThrow(),
        understood,
        upkeep.orElseThrow());
  }

  /** A needle against its stop shows too little. */
  private void sayPegged(HoldTest test, GaugeSpec gauge) {
    List<Reading> pegged =
        test.log().readings().stream()
            .filter(reading -> reading.pressure() >= gauge.range() - gauge.resolution() / 2)
            .toList();
    if (!pegged.isEmpty()) {
      understood.add(
          Message.of(
              "%s: The gauge stood at the end of its scale of %s in %d %s, the first at %s s: the"
                  + " pressure may have been higher.",
              test.id(),
              Message.round(gauge.range()),
              pegged.size(),
              pegged.size() == 1 ? "reading" : "readings",
              Words.number(pegged.get(0).time())));
    }
  }

  private Circuit readCircuit(JsonPlace root) {
    String remedy = "name the circuit file, such as \"my-car.circuit.json\"";
    return CircuitReader.read(Siblings.of(file, root.get("circuit", remedy), remedy));
  }

  static GaugeSpec gauge(JsonPlace place) {
    place.requireObject(
        "write { \"range_bar\": 4, \"class_percent\": 1.6, \"resolution_bar\": 0.02 }");
    place.allow(GAUGE_ENTRIES);
    GaugeSpec usual = GaugeSpec.usual();
    return new GaugeSpec(
        bar(place, "range_bar", 1, 40, usual.range()),
        place
            .find("class_percent")
            .map(p -> p.number(0.01, 10, " %") / 100)
            .orElse(usual.accuracyClass()),
        bar(place, "resolution_bar", 0.0001, 1, usual.resolution()));
  }

  private static double bar(JsonPlace place, String name, double least, double most, double usual) {
    return place.find(name).map(p -> p.number(least, most, " bar") * 1e5).orElse(usual);
  }

  private List<HoldTest> readTests(JsonPlace list, Circuit circuit) {
    List<JsonPlace> items = list.items("list the tests as [ { \"id\": ..., \"log\": ... }, ... ]");
    if (items.isEmpty() && !unfinished) {
      throw list.bad("there is no hold test", "add one with its log");
    }
    if (items.size() > MOST_TESTS) {
      throw list.bad(
          "the job has " + items.size() + " hold tests", "keep it to " + MOST_TESTS + " at most");
    }
    List<HoldTest> tests = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    int readings = 0;
    InputErrors troubles = new InputErrors();
    for (JsonPlace item : items) {
      Optional<HoldTest> read = troubles.attempt(() -> readTest(item, circuit));
      if (read.isEmpty()) {
        continue;
      }
      HoldTest test = read.get();
      if (!ids.add(test.id())) {
        troubles.add(
            item.bad("a second test is called '" + test.id() + "'", "give each its own id"));
      }
      readings += test.log().readings().size();
      if (readings > MOST_READINGS) {
        throw item.bad(
            "with this test the job has more than " + MOST_READINGS + " readings",
            "thin out the logs");
      }
      tests.add(test);
    }
    troubles.refuse();
    return tests;
  }

  private HoldTest readTest(JsonPlace place, Circuit circuit) {
    place.requireObject("describe a test as { \"id\": ..., \"clamped\": [ ], \"log\": ... }");
    place.allow(TEST_ENTRIES);
    String id = place.get("id", "give the test a short name").text("write a short name");
    GaugeLog log = readLog(id, place, circuit);
    return new HoldTest(
        id,
        clampedHoses(place, circuit),
        place.find("clamp_time_s").map(p -> p.number(0, 600, " s")).orElse(5.0),
        place.find("prime_s").map(p -> p.number(0, 36000, " s")).orElse(20.0),
        place
            .find("fuel_temp_C")
            .map(p -> OptionalDouble.of(Celsius.toKelvins(p.number(-20, 90, " °C"))))
            .orElseGet(OptionalDouble::empty),
        log,
        place.find("date").map(date -> day(date, id)).orElse(""),
        place.find("notes").map(p -> p.text("write a text")).orElse(""));
  }

  /** A day in words stays as written; one in figures must be in the calendar, year first. */
  private String day(JsonPlace place, String id) {
    String text = place.text("write a date");
    if (FIGURES.matcher(text).matches() && !Days.isDay(text)) {
      boolean yearFirst = DAY.matcher(text).matches();
      String problem = yearFirst ? "there is no day '%s'" : "the date '%s' can be read in two ways";
      if (!unfinished) {
        throw place.bad(problem.formatted(text), "write year, month and day as 2026-04-11");
      }
      understood.add(Message.of("%s: %s; kept as written.", id, problem.formatted(text)));
    }
    return text;
  }

  private GaugeLog readLog(String id, JsonPlace test, Circuit circuit) {
    if (unfinished && test.find("log").isEmpty()) {
      return new GaugeLog(id, List.of(), 0);
    }
    Path logFile = Siblings.of(file, test.get("log", "name its log file"), "name its log file");
    LogImport log =
        unfinished ? GaugeLogReader.readUnfinished(logFile) : GaugeLogReader.read(logFile);
    understood(log, circuit)
        .forEach(sentence -> understood.add(Message.of("%s: %s", id, sentence)));
    return log.log();
  }

  /** What is to be said about a log that was read on a circuit. */
  static List<Message> understood(LogImport log, Circuit circuit) {
    List<Message> said = new ArrayList<>();
    log.understood().stream()
        .filter(sentence -> !ROUTINE.contains(sentence.toString()))
        .forEach(said::add);
    UnitDoubt.of(log, circuit).ifPresent(said::add);
    return said;
  }

  /** The hoses that the entry {@code clamped} lists; none without it. */
  static Set<String> clampedHoses(JsonPlace test, Circuit circuit) {
    List<String> clampable = Hose.clampable(circuit);
    Set<String> hoses = new LinkedHashSet<>();
    test.find("clamped")
        .ifPresent(
            list -> {
              for (JsonPlace item : list.items("list hose ids, or [ ] for none")) {
                String hose = item.text("write the id of a hose");
                if (!clampable.contains(hose)) {
                  throw item.bad(
                      "no hose '" + hose + "' that can be clamped",
                      "in this circuit one can clamp " + Words.list(clampable));
                }
                if (!hoses.add(hose)) {
                  throw item.bad("'" + hose + "' is named twice", "name each clamped hose once");
                }
              }
            });
    return hoses;
  }

  private static Map<String, Double> readPriors(JsonPlace root) {
    Map<String, Double> priors = new LinkedHashMap<>();
    root.find("priors")
        .ifPresent(
            place -> {
              place.requireObject("write { \"fault id\": 0.5 }");
              place
                  .node()
                  .fieldNames()
                  .forEachRemaining(
                      name ->
                          priors.put(name, place.get(name, "give a number").number(0, 1000, "")));
            });
    return priors;
  }
}
