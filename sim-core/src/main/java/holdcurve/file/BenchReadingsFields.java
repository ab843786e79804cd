package holdcurve.file;

import holdcurve.bench.flowsheet.Bench;
import holdcurve.bench.flowsheet.BenchDrops;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.bench.flowsheet.BenchReadings;
import holdcurve.bench.flowsheet.DynamicFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what was measured on one injector, from a JSON object or a line of a table.
 *
 * @param limits names the grades of spray
 * @param bench for flows in grams
 * @param conditions where {@code drop_time_min} is stated
 */
record BenchReadingsFields(BenchLimits limits, Bench bench, SheetFields conditions) {
  private static final double PER_MINUTE = 1e-6 / 60;

  /** Static flow: heading → factor to [m³/s]; those in grams are divided by the density. */
  private static final Map<String, Double> STATIC =
      Map.of(
          "static_ml_min", PER_MINUTE,
          "static_flow_ml_min", PER_MINUTE,
          "static_cc_min", PER_MINUTE,
          "static_flow_cc_min", PER_MINUTE,
          "static_l_h", 1e-3 / 3600,
          "static_g_min", 1e-3 / 60);

  private static final Pattern DYNAMIC =
      Pattern.compile(
          "dynamic(?:_flow)?_(\\d+(?:\\.\\d+)?)_?ms_(ml_1000|cc_1000|mm3|mg)(?:_?pulses?)?");
  private static final Set<String> TABLE =
      Set.of(
          "injector",
          "serial",
          "service",
          "static_ml_min",
          "static_cc_min",
          "static_l_h",
          "static_g_min",
          "static_flow_ml_min",
          "static_flow_cc_min",
          "dynamic_2.5ms_ml_1000",
          "drops",
          "drop_time_min",
          "spray",
          "coil_ohm",
          "notes");
  private static final Set<String> OBJECT =
      Set.of(
          "static_ml_min",
          "static_g_min",
          "dynamic",
          "drops",
          "drop_time_min",
          "spray",
          "coil_ohm",
          "notes");

  BenchReadings read(JsonPlace place) {
    place.requireObject("write { \"static_mL_min\": 180 }");
    SheetFields fields = SheetFields.of(place);
    fields.allow(OBJECT);
    List<DynamicFlow> dynamic = new ArrayList<>();
    place
        .find("dynamic")
        .ifPresent(
            list -> {
              String remedy = "list them as [ { \"pulse_ms\": 2.5, \"mL_1000\": 6.1 } ]";
              for (JsonPlace item : list.items(remedy)) {
                item.requireObject(remedy);
                SheetFields flow = SheetFields.of(item);
                flow.allow(Set.of("pulse_ms", "ml_1000"));
                double pulse = flow.get("pulse_ms", remedy).number(0.2, 1000, " ms");
                dynamic.add(dynamic(pulse, flow.get("ml_1000", remedy), "ml_1000"));
              }
            });
    return readings(fields, dynamic);
  }

  BenchReadings read(SheetFields row) {
    row.allow(TABLE, DYNAMIC);
    List<DynamicFlow> dynamic = new ArrayList<>();
    row.fields()
        .forEach(
            (name, value) -> {
              Matcher m = DYNAMIC.matcher(name);
              if (m.matches()) {
                dynamic.add(dynamic(Double.parseDouble(m.group(1)), value, m.group(2)));
              }
            });
    return readings(row, dynamic);
  }

  private DynamicFlow dynamic(double pulse, JsonPlace value, String unit) {
    boolean mass = unit.equals("mg");
    double volume = value.number(0.01, 2000, mass ? " mg" : " mL per 1000 pulses");
    return new DynamicFlow(
        pulse * 1e-3, mass ? volume * 1e-6 / bench.point().density() : volume * 1e-9);
  }

  private BenchReadings readings(SheetFields fields, List<DynamicFlow> dynamic) {
    return new BenchReadings(
        staticFlow(fields),
        dynamic,
        drops(fields),
        fields.find("spray").map(this::spray),
        fields
            .find("coil_ohm")
            .map(p -> OptionalDouble.of(p.number(0, 1e5, " Ω")))
            .orElse(OptionalDouble.empty()));
  }

  private OptionalDouble staticFlow(SheetFields fields) {
    List<String> given =
        STATIC.keySet().stream().filter(fields.fields()::containsKey).sorted().toList();
    if (given.isEmpty()) {
      return OptionalDouble.empty();
    }
    JsonPlace place = fields.get(given.get(0), "");
    if (given.size() > 1) {
      throw place.bad("static flow is given in two units", "keep one of the two columns");
    }
    double factor = STATIC.get(given.get(0));
    if (given.get(0).endsWith("_g_min")) {
      return OptionalDouble.of(place.number(10, 3000, " g/min") * factor / bench.point().density());
    }
    boolean litres = given.get(0).endsWith("l_h");
    return OptionalDouble.of(
        factor * (litres ? place.number(1, 200, " L/h") : place.number(10, 3000, " mL/min")));
  }

  private Optional<BenchDrops> drops(SheetFields fields) {
    return fields
        .find("drops")
        .map(
            place -> {
              double drops = place.number(0, 10_000, " drops");
              if (drops != Math.rint(drops)) {
                throw place.bad(place.shown() + " drops can't be counted", "give a whole number");
              }
              SheetFields at = fields.find("drop_time_min").isPresent() ? fields : conditions;
              double minutes =
                  at.find("drop_time_min")
                      .orElseThrow(
                          () ->
                              place.bad(
                                  "nothing says in what time the drops fell",
                                  "add drop_time_min beside the pressure of the bench"))
                      .number(0.1, 600, " min");
              return new BenchDrops((int) drops, 60 * minutes);
            });
  }

  /** A grade by its number or its word. */
  private int spray(JsonPlace place) {
    List<String> grades = limits.sprayGrades();
    String remedy =
        "give 1 (best) to " + grades.size() + ", or one of: " + String.join(", ", grades);
    if (place.node().isNumber()) {
      double grade = place.number(remedy);
      if (grade != Math.rint(grade) || grade < 1 || grade > grades.size()) {
        throw place.bad(place.shown() + " is no grade of spray", remedy);
      }
      return (int) grade;
    }
    int index = grades.indexOf(place.text(remedy).toLowerCase(Locale.ROOT));
    if (index < 0) {
      throw place.bad(place.shown() + " is no grade of spray", remedy);
    }
    return index + 1;
  }
}
