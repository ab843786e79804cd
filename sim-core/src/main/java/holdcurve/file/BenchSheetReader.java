package holdcurve.file;

import holdcurve.bench.flowsheet.Bench;
import holdcurve.bench.flowsheet.BenchInjector;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.FlowPoint;
import holdcurve.bench.flowsheet.Service;
import holdcurve.common.input.InputException;
import holdcurve.common.number.Celsius;
import holdcurve.record.log.SheetTable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads bench sheets: {@code *.bench.json}, or a table with one line an injector and, where it was
 * measured twice, a column {@code service} that says {@code before} or {@code after}.
 */
public final class BenchSheetReader {
  private static final String KIND = "holdcurve-bench-sheet";
  private static final Set<String> ENTRIES =
      Set.of(
          "format",
          "title",
          "notes",
          "bench",
          "bench_before",
          "rated",
          "serviced",
          "date",
          "injectors");
  private static final Set<String> BENCH_SETTINGS =
      with(
          Set.of(
              "fluid",
              "fluid_temp_c",
              "repeatability_percent",
              "accuracy_percent",
              "drop_time_min"),
          "pressure");
  private static final Set<String> TABLE_SETTINGS =
      with(
          Set.of("format", "title", "notes", "serviced", "date", "rated_ml_min", "rated_fluid"),
          "rated");
  private static final Set<String> STATES = Set.of("before_", "after_");

  private static Set<String> with(Set<String> names, String pressure) {
    Set<String> all = new TreeSet<>(names);
    SheetPressures.addNames(all, pressure);
    return all;
  }

  private final BenchLimits limits;
  private final String file;
  private final List<String> understood = new ArrayList<>();

  private BenchSheetReader(String file, BenchLimits limits) {
    this.file = file;
    this.limits = limits;
  }

  /**
   * @throws InputException if the sheet can't be used, saying where and why
   */
  public static BenchSheet read(Path path, BenchLimits limits) {
    BenchSheetReader reader = new BenchSheetReader(path.toString(), limits);
    boolean json = path.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    return json
        ? reader.json(JsonFiles.read(path, KIND, 1, reader.understood))
        : reader.table(SheetTable.read(path, "injector"));
  }

  /**
   * Reads a table from a text, for example from the clipboard.
   *
   * @param name where it comes from, for messages
   * @throws InputException as for a file
   */
  public static BenchSheet read(String name, String text, BenchLimits limits) {
    return read(name, text, limits, Map.of());
  }

  /**
   * Reads a table that was pasted into a form.
   *
   * @param usual settings of the form, for what the table doesn't say; pressure in bar
   * @throws InputException as for a file
   */
  public static BenchSheet read(
      String name, String text, BenchLimits limits, Map<String, String> usual) {
    SheetTable read = SheetTable.read(name, text, "injector");
    Map<String, SheetTable.Cell> settings = new LinkedHashMap<>(read.settings());
    boolean measured = SheetPressures.names("pressure").stream().anyMatch(settings::containsKey);
    usual.forEach(
        (setting, value) -> {
          boolean said = setting.startsWith("pressure") ? measured : settings.containsKey(setting);
          if (!said && !value.isBlank()) {
            settings.put(setting, new SheetTable.Cell("in the form, " + setting, value));
          }
        });
    return new BenchSheetReader(name, limits)
        .table(
            new SheetTable(
                read.source(), settings, read.headings(), read.rows(), read.understood()));
  }

  private BenchSheet json(JsonPlace root) {
    root.allow(ENTRIES);
    SheetFields top = SheetFields.of(root);
    SheetFields place = object(root.get("bench", "say at what pressure it was measured"));
    place.allow(BENCH_SETTINGS);
    Bench bench = bench(place, "");
    Optional<SheetFields> earlier = root.find("bench_before").map(BenchSheetReader::object);
    earlier.ifPresent(fields -> fields.allow(BENCH_SETTINGS));
    Bench before = earlier.map(fields -> bench(fields, "")).orElse(bench);
    List<BenchInjector> injectors = new ArrayList<>();
    for (JsonPlace item : root.get("injectors", "list the injectors").items("list them as [ ]")) {
      injectors.add(injector(item, earlier.orElse(place), place, before, bench));
    }
    OptionalDouble rated =
        root.find("rated")
            .map(BenchSheetReader::object)
            .map(fields -> rated(fields, "static_ml_min", "pressure", "fluid", bench))
            .orElse(OptionalDouble.empty());
    return sheet(top, before, bench, rated, injectors);
  }

  private static SheetFields object(JsonPlace place) {
    place.requireObject("write { \"pressure_bar\": 3.0 }");
    return SheetFields.of(place);
  }

  private BenchInjector injector(
      JsonPlace place, SheetFields earlier, SheetFields later, Bench before, Bench after) {
    place.requireObject("write { \"id\": \"1\", \"before\": { }, \"after\": { } }");
    place.allow(Set.of("id", "serial", "before", "after", "notes"));
    String id = SheetFields.of(place).word("id", "give the injector its number");
    Optional<BenchReadings> was =
        place.find("before").map(p -> new BenchReadingsFields(limits, before, earlier).read(p));
    Optional<BenchReadings> is =
        place.find("after").map(p -> new BenchReadingsFields(limits, after, later).read(p));
    if (was.isEmpty() && is.isEmpty()) {
      throw place.bad("there are no readings", "add \"before\" or \"after\"");
    }
    return new BenchInjector(id, serial(SheetFields.of(place)), was, is);
  }

  private static Optional<String> serial(SheetFields fields) {
    return fields.find("serial").map(p -> fields.word("serial", "write the mark on its body"));
  }

  private BenchSheet table(SheetTable table) {
    understood.addAll(table.understood());
    SheetFields top = SheetFields.of(file, "", table.settings());
    Set<String> known = new TreeSet<>(TABLE_SETTINGS);
    BENCH_SETTINGS.forEach(
        name -> {
          known.add(name);
          known.add("before_" + name);
        });
    top.allow(known);
    TableFormat.require(top, KIND, 1);
    Bench bench = bench(top, "");
    boolean two = table.settings().keySet().stream().anyMatch(name -> name.startsWith("before_"));
    Bench before = two ? bench(top, "before_") : bench;
    OptionalDouble rated =
        top.find("rated_ml_min").isPresent()
            ? rated(top, "rated_ml_min", "rated", "rated_fluid", bench)
            : OptionalDouble.empty();
    return sheet(top, before, bench, rated, rows(table, top, before, bench));
  }

  private List<BenchInjector> rows(SheetTable table, SheetFields top, Bench before, Bench after) {
    Map<String, Map<Service, BenchReadings>> found = new LinkedHashMap<>();
    Map<String, Optional<String>> serials = new LinkedHashMap<>();
    boolean sideBySide = table.headings().stream().anyMatch(BenchSheetReader::namesState);
    for (SheetTable.Row row : table.rows()) {
      SheetFields fields = SheetFields.of(file, "line " + row.line(), row.cells());
      String id = fields.word("injector", "give the injector its number");
      serials.merge(id, serial(fields), (first, second) -> first.or(() -> second));
      if (sideBySide && found.containsKey(id)) {
        throw InputException.at(
            file,
            "line " + row.line(),
            "injector " + id + " stands there a second time",
            "keep one line for each injector");
      }
      Map<Service, SheetFields> states =
          sideBySide ? sideBySide(fields) : Map.of(state(fields), fields);
      states.forEach(
          (state, part) -> {
            Bench bench = state == Service.BEFORE ? before : after;
            BenchReadings readings = new BenchReadingsFields(limits, bench, top).read(part);
            Map<Service, BenchReadings> one =
                found.computeIfAbsent(id, key -> new LinkedHashMap<>());
            if (one.put(state, readings) != null) {
              throw InputException.at(
                  file,
                  "line " + row.line(),
                  "injector " + id + " stands there a second time " + state.word() + " service",
                  "give one line for before and one for after service");
            }
          });
    }
    return found.entrySet().stream()
        .map(
            e ->
                new BenchInjector(
                    e.getKey(),
                    serials.get(e.getKey()),
                    Optional.ofNullable(e.getValue().get(Service.BEFORE)),
                    Optional.ofNullable(e.getValue().get(Service.AFTER))))
        .toList();
  }

  private static boolean namesState(String heading) {
    return STATES.stream().anyMatch(heading::startsWith);
  }

  /** One line for both: columns {@code before_...} and {@code after_...}. */
  private static Map<Service, SheetFields> sideBySide(SheetFields row) {
    row.find("service")
        .ifPresent(
            place -> {
              throw place.bad(
                  "the columns say before or after already", "leave out the column service");
            });
    Map<Service, SheetFields> states = new LinkedHashMap<>();
    for (Service state : Service.values()) {
      String prefix = state.word() + "_";
      Map<String, JsonPlace> own = new LinkedHashMap<>();
      row.fields()
          .forEach(
              (name, value) -> {
                if (name.startsWith(prefix)) {
                  own.put(name.substring(prefix.length()), value);
                } else if (!namesState(name)) {
                  own.putIfAbsent(name, value);
                }
              });
      boolean any = row.fields().keySet().stream().anyMatch(name -> name.startsWith(prefix));
      boolean none = row.fields().keySet().stream().noneMatch(BenchSheetReader::namesState);
      if (any || none && state == Service.BEFORE) {
        states.put(state, new SheetFields(row.file(), row.place(), own));
      }
    }
    return states;
  }

  private static Service state(SheetFields fields) {
    Optional<JsonPlace> place = fields.find("service");
    if (place.isEmpty()) {
      return Service.BEFORE;
    }
    String remedy = "write before or after";
    String word = place.get().text(remedy).toLowerCase(Locale.ROOT);
    for (Service state : Service.values()) {
      if (state.word().equals(word)) {
        return state;
      }
    }
    throw place.get().bad("'" + word + "' is no state of service", remedy);
  }

  private BenchSheet sheet(
      SheetFields top,
      Bench before,
      Bench after,
      OptionalDouble rated,
      List<BenchInjector> injectors) {
    if (injectors.isEmpty()) {
      throw InputException.at(file, "injectors", "there is none", "add the injectors");
    }
    Set<String> ids = new java.util.HashSet<>();
    for (BenchInjector injector : injectors) {
      if (!ids.add(injector.id())) {
        throw InputException.at(
            file, "injectors", "two are called " + injector.id(), "give each its own number");
      }
    }
    String title =
        top.find("title")
            .map(place -> place.text("give it a name"))
            .orElseGet(() -> Path.of(file).getFileName().toString());
    return new BenchSheet(
        title,
        before,
        after,
        rated,
        top.find("serviced").map(this::day),
        top.find("date").map(this::day),
        injectors,
        understood);
  }

  private LocalDate day(JsonPlace place) {
    String remedy = "write the day as 2026-11-10";
    try {
      return LocalDate.parse(place.text(remedy));
    } catch (DateTimeParseException e) {
      throw place.bad(place.shown() + " is no date", remedy);
    }
  }

  private Bench bench(SheetFields fields, String prefix) {
    double pressure =
        SheetPressures.get(
                fields,
                prefix + "pressure",
                "say at what pressure it was measured; in a table, in a line above the headings,"
                    + " pressure_bar and then the figure")
            .pascals(0.5, 12);
    double celsius = fields.number(prefix + "fluid_temp_c", -10, 60, " °C", 20);
    FlowPoint point =
        new FlowPoint(
            pressure,
            FluidNames.read(fields, prefix + "fluid", "n-heptane"),
            Celsius.toKelvins(celsius));
    return new Bench(
        point,
        percent(fields, prefix + "repeatability_percent", 0.01, limits.repeatability()),
        percent(fields, prefix + "accuracy_percent", 0, limits.accuracy()));
  }

  private static double percent(SheetFields fields, String name, double least, double usual) {
    return fields.number(name, least, 20, " %", 100 * usual) / 100;
  }

  /** What the maker states, carried over to the bench after service. */
  private static OptionalDouble rated(
      SheetFields fields, String flow, String pressure, String fluid, Bench bench) {
    double flowRate =
        fields.get(flow, "give the static flow that the maker states").number(20, 3000, " mL/min");
    double stated =
        SheetPressures.find(fields, pressure)
            .map(p -> p.pascals(0.5, 12))
            .orElse(bench.point().pressure());
    FlowPoint at =
        new FlowPoint(
            stated,
            FluidNames.read(fields, fluid, bench.point().fluid().id()),
            bench.point().temperature());
    return OptionalDouble.of(flowRate * 1e-6 / 60 * at.factorTo(bench.point()));
  }
}
