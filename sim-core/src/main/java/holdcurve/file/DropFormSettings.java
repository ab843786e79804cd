package holdcurve.file;

import holdcurve.common.message.PressureUnit;
import holdcurve.record.log.SheetTable;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a form says of a drop test, for a table that is pasted into it.
 *
 * @param settings name → value, as a table would have them; pressures in bar
 * @param unit of readings whose heading names none
 */
public record DropFormSettings(Map<String, String> settings, PressureUnit unit) {
  private static final List<String> HEADINGS = List.of("injector", "before", "after", "later");
  private static final Pattern NAMES = Pattern.compile("(?i)injector");

  public DropFormSettings {
    settings = Map.copyOf(settings);
  }

  /** Puts in what a table leaves open. One way of saying how long it was fired is enough. */
  void addTo(Map<String, SheetTable.Cell> stated) {
    boolean fired = stated.containsKey("fire_s") || stated.containsKey("pulses");
    boolean drawn = stated.keySet().stream().anyMatch(name -> name.startsWith("drawn_"));
    settings.forEach(
        (name, value) -> {
          boolean said =
              stated.containsKey(name)
                  || fired && name.startsWith("pulse")
                  || drawn && name.startsWith("drawn_")
                  || name.startsWith("gauge_resolution")
                      && stated.keySet().stream().anyMatch(n -> n.startsWith("gauge_resolution"));
          if (!said && !value.isBlank()) {
            stated.put(name, new SheetTable.Cell("in the form, " + name, value));
          }
        });
  }

  /** A table with a line of headings: its own, or the usual ones where it begins with readings. */
  String headed(String text) {
    if (NAMES.matcher(text).find()) {
      return text;
    }
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    if (lines.isEmpty()) {
      return text;
    }
    String mark = mark(lines.get(0));
    List<String> rows =
        mark.equals(" ")
            ? lines.stream().map(line -> line.strip().replaceAll("\\s+", ";")).toList()
            : lines;
    String between = mark.equals(" ") ? ";" : mark;
    int columns = rows.get(0).split(Pattern.quote(between), -1).length;
    String heading =
        HEADINGS.stream().limit(Math.max(3, columns)).collect(Collectors.joining(between));
    return heading + "\n" + String.join("\n", rows) + "\n";
  }

  private static String mark(String line) {
    for (String mark : List.of("\t", ";", "|")) {
      if (line.contains(mark)) {
        return mark;
      }
    }
    return line.strip().contains(" ") ? " " : ",";
  }
}
