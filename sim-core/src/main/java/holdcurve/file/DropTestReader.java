package holdcurve.file;

import holdcurve.bench.droptest.DropTest;
import holdcurve.bench.droptest.Firing;
import holdcurve.bench.droptest.IdleFall;
import holdcurve.bench.droptest.Shot;
import holdcurve.common.input.InputException;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.log.SheetTable;
import java.nio.file.Path;
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
 * Reads drop-per-pulse tests: {@code *.drops.json}, or a table with a line for each firing and the
 * columns {@code injector}, {@code before_bar} and {@code after_bar}. A line for the injector
 * {@code idle} is what the gauge lost in {@code idle_s} without firing.
 */
public final class DropTestReader {
  private static final String KIND = "holdcurve-drop-test";
  private static final Set<String> SETTINGS =
      with(
          Set.of(
              "format",
              "title",
              "notes",
              "fire_s",
              "pulses",
              "pulse_ms",
              "wait_s",
              "later_s",
              "idle_s",
              "drawn_ml"),
          "gauge_resolution",
          "drawn_from",
          "drawn_to");
  private static final Set<String> COLUMNS = with(Set.of("injector"), "before", "after", "later");

  /** Readings in the unit of the form that a table was pasted into. */
  private static final Set<String> BARE = Set.of("before", "after", "later");

  /** Time in which a few millilitres are let out at the tee: common practice, no source [s]. */
  private static final double USUAL_DRAWING = 10;

  private final String file;
  private final List<Firing> firings = new ArrayList<>();
  private final List<IdleFall> idle = new ArrayList<>();
  private final Optional<DropFormSettings> form;

  /** Firings after which the needle stood where it was. */
  private final List<InputException> stuck = new ArrayList<>();

  private DropTestReader(String file, Optional<DropFormSettings> form) {
    this.file = file;
    this.form = form;
  }

  private static Set<String> with(Set<String> names, String... pressures) {
    Set<String> all = new TreeSet<>(names);
    SheetPressures.addNames(all, pressures);
    return all;
  }

  /**
   * @throws InputException if the test can't be used, saying where and why
   */
  public static DropTest read(Path path) {
    DropTestReader reader = new DropTestReader(path.toString(), Optional.empty());
    boolean json = path.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    return json ? reader.json(path) : reader.table(SheetTable.read(path, "injector"));
  }

  /**
   * Reads a table from a text, for example from the clipboard.
   *
   * @param name where it comes from, for messages
   * @throws InputException as for a file
   */
  public static DropTest read(String name, String text) {
    return new DropTestReader(name, Optional.empty())
        .table(SheetTable.read(name, text, "injector"));
  }

  /**
   * Reads a table that was pasted into a form. What it doesn't say is as the form says; without a
   * line of headings the columns are injector, before, after and later.
   *
   * @throws InputException as for a file
   */
  public static DropTest read(String name, String text, DropFormSettings form) {
    return new DropTestReader(name, Optional.of(form))
        .table(SheetTable.read(name, form.headed(text), "injector"));
  }

  private DropTest json(Path path) {
    List<String> understood = new ArrayList<>();
    JsonPlace root = JsonFiles.read(path, KIND, 1, understood);
    SheetFields top = SheetFields.of(root);
    Set<String> known = new TreeSet<>(SETTINGS);
    known.add("readings");
    top.allow(known);
    String remedy =
        "list them as [ { \"injector\": \"1\", \"before_bar\": 2, \"after_bar\": 1.6 } ]";
    for (JsonPlace item : root.get("readings", remedy).items(remedy)) {
      item.requireObject(remedy);
      SheetFields fields = SheetFields.of(item);
      fields.allow(COLUMNS);
      add(fields, top);
    }
    return test(top, understood);
  }

  private DropTest table(SheetTable table) {
    Map<String, SheetTable.Cell> settings = new LinkedHashMap<>(table.settings());
    form.ifPresent(usual -> usual.addTo(settings));
    SheetFields top = SheetFields.of(file, "", settings);
    top.allow(SETTINGS);
    TableFormat.require(top, KIND, 1);
    for (SheetTable.Row row : table.rows()) {
      SheetFields fields = SheetFields.of(file, "line " + row.line(), row.cells());
      fields.allow(form.isPresent() ? with(BARE, COLUMNS) : COLUMNS);
      add(fields, top);
    }
    return test(top, table.understood());
  }

  private void add(SheetFields row, SheetFields top) {
    String injector =
        SpreadsheetText.original(row.word("injector", "give the injector its number, or idle"));
    SheetPressures.Stated first = reading(row, "before", "give the reading before");
    SheetPressures.Stated second = reading(row, "after", "give the reading after");
    double before = first.pascals(0.1, 10);
    double after = second.pascals(0, 10);
    boolean none = injector.equalsIgnoreCase("idle");
    if (after > before || !none && after == before) {
      InputException refusal =
          notBelow(
              second,
              first,
              "before",
              after > before
                  ? "check whether the two stand the wrong way round"
                  : "fire longer, so that the needle moves by several steps");
      if (after > before) {
        throw refusal;
      }
      stuck.add(refusal);
    }
    if (none) {
      double time = top.get("idle_s", "say how long the gauge was watched").number(5, 3600, " s");
      idle.add(new IdleFall(before, after, time));
    } else {
      firings.add(new Firing(injector, before, after, later(row, top, second, after)));
    }
  }

  private SheetPressures.Stated reading(SheetFields row, String stem, String remedy) {
    Optional<JsonPlace> bare = row.find(stem);
    return bare.isPresent()
        ? new SheetPressures.Stated(bare.get(), form.orElseThrow().unit())
        : SheetPressures.get(row, stem, remedy);
  }

  private static InputException notBelow(
      SheetPressures.Stated lower, SheetPressures.Stated upper, String when, String remedy) {
    return lower
        .place()
        .bad(
            lower.place().shown()
                + " "
                + lower.unit().symbol()
                + " is not below the "
                + upper.place().shown()
                + " "
                + upper.unit().symbol()
                + " "
                + when,
            remedy);
  }

  private OptionalDouble later(
      SheetFields row, SheetFields top, SheetPressures.Stated second, double after) {
    if (row.find("later").isEmpty() && SheetPressures.find(row, "later").isEmpty()) {
      return OptionalDouble.empty();
    }
    SheetPressures.Stated third = reading(row, "later", "give the third reading");
    top.get("later_s", "say how long after the second reading the third was taken");
    double pressure = third.pascals(0, 10);
    if (pressure > after) {
      throw notBelow(
          third, second, "after the firing", "check whether the two stand the wrong way round");
    }
    return OptionalDouble.of(pressure);
  }

  private static Set<String> with(Set<String> names, Set<String> more) {
    Set<String> all = new TreeSet<>(names);
    all.addAll(more);
    return all;
  }

  private DropTest test(SheetFields top, List<String> understood) {
    long injectors = firings.stream().map(Firing::injector).distinct().count();
    if (injectors < 2) {
      String fired = injectors == 0 ? "no injector was fired" : "only 1 injector was fired";
      throw InputException.at(file, "", fired, "compare at least two");
    }
    if (firings.size() > 2000) {
      throw InputException.at(file, "", "there are more than 2000 firings", "leave some out");
    }
    if (2 * stuck.size() >= firings.size()) {
      throw stuck.get(0);
    }
    String title =
        top.find("title")
            .map(place -> place.text("give it a name"))
            .orElseGet(() -> Path.of(file).getFileName().toString());
    double step =
        SheetPressures.get(
                top, "gauge_resolution", "say to what step the gauge was read, such as 0.05")
            .pascals(0.001, 0.5);
    double watch = top.number("later_s", 1, 3600, " s", 0);
    return new DropTest(title, step, shot(top), watch, firings, idle, drawOff(top), understood);
  }

  private Shot shot(SheetFields top) {
    double pause =
        top.get("wait_s", "say how long after the first reading the second was taken")
            .number(0.5, 300, " s");
    if (top.find("fire_s").isPresent()) {
      double time = top.get("fire_s", "").number(0.01, 10, " s");
      return new Shot(1, time, pause);
    }
    String remedy = "say how long it was fired: fire_s, or pulses and pulse_ms";
    JsonPlace count = top.get("pulses", remedy);
    double pulses = count.number(1, 10_000, " pulses");
    if (pulses != Math.rint(pulses)) {
      throw count.bad(count.shown() + " pulses can't be fired", "give a whole number");
    }
    double width = top.get("pulse_ms", remedy).number(0.5, 1000, " ms");
    return new Shot((int) Math.round(pulses), 1e-3 * width, pause);
  }

  private static Optional<DrawOff> drawOff(SheetFields top) {
    return top.find("drawn_ml")
        .map(
            place -> {
              double volume = 1e-6 * place.number(0.05, 500, " mL");
              SheetPressures.Stated first =
                  SheetPressures.get(top, "drawn_from", "give the reading before");
              SheetPressures.Stated last =
                  SheetPressures.get(top, "drawn_to", "give the reading after");
              double from = first.pascals(0.1, 10);
              double to = last.pascals(0, 10);
              if (to >= from) {
                throw notBelow(last, first, "before", "swap the two");
              }
              return new DrawOff(volume, from, to, USUAL_DRAWING, Set.of());
            });
  }
}
