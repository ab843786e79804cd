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
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
      Set.of(
          "format",
          "title",
          "notes",
          "gauge_resolution_bar",
          "fire_s",
          "pulses",
          "pulse_ms",
          "wait_s",
          "idle_s",
          "drawn_ml",
          "drawn_from_bar",
          "drawn_to_bar");
  private static final Set<String> COLUMNS = Set.of("injector", "before_bar", "after_bar");

  /** Time in which a few millilitres are let out at the tee: common practice, no source [s]. */
  private static final double USUAL_DRAWING = 10;

  private final String file;
  private final List<Firing> firings = new ArrayList<>();
  private final List<IdleFall> idle = new ArrayList<>();

  private DropTestReader(String file) {
    this.file = file;
  }

  /**
   * @throws InputException if the test can't be used, saying where and why
   */
  public static DropTest read(Path path) {
    DropTestReader reader = new DropTestReader(path.toString());
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
    return new DropTestReader(name).table(SheetTable.read(name, text, "injector"));
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
    SheetFields top = SheetFields.of(file, "", table.settings());
    top.allow(SETTINGS);
    TableFormat.require(top, KIND, 1);
    for (SheetTable.Row row : table.rows()) {
      SheetFields fields = SheetFields.of(file, "line " + row.line(), row.cells());
      fields.allow(COLUMNS);
      add(fields, top);
    }
    return test(top, table.understood());
  }

  private void add(SheetFields row, SheetFields top) {
    String injector =
        SpreadsheetText.original(row.word("injector", "give the injector its number, or idle"));
    double before = 1e5 * row.get("before_bar", "give the reading before").number(0.1, 10, " bar");
    JsonPlace place = row.get("after_bar", "give the reading after");
    double after = 1e5 * place.number(0, 10, " bar");
    boolean none = injector.equalsIgnoreCase("idle");
    if (after > before || !none && after == before) {
      throw place.bad(
          place.shown() + " bar is not below the " + Words.number(before / 1e5) + " bar before",
          after > before
              ? "check whether the two stand the wrong way round"
              : "fire longer, so that the needle moves by several steps");
    }
    if (none) {
      double time = top.get("idle_s", "say how long the gauge was watched").number(5, 3600, " s");
      idle.add(new IdleFall(before, after, time));
    } else {
      firings.add(new Firing(injector, before, after));
    }
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
    String title =
        top.find("title")
            .map(place -> place.text("give it a name"))
            .orElseGet(() -> Path.of(file).getFileName().toString());
    double step =
        1e5
            * top.get("gauge_resolution_bar", "say to what step the gauge was read, such as 0.05")
                .number(0.001, 0.5, " bar");
    return new DropTest(title, step, shot(top), firings, idle, drawOff(top), understood);
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
              double from =
                  1e5
                      * top.get("drawn_from_bar", "give the reading before")
                          .number(0.1, 10, " bar");
              JsonPlace end = top.get("drawn_to_bar", "give the reading after");
              double to = 1e5 * end.number(0, 10, " bar");
              if (to >= from) {
                throw end.bad(end.shown() + " bar is not below the reading before", "swap the two");
              }
              return new DrawOff(volume, from, to, USUAL_DRAWING, Set.of());
            });
  }
}
