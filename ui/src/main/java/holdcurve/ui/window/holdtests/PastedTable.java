package holdcurve.ui.window.holdtests;

import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A pasted table of time and pressure that may leave its unit of pressure unsaid. It was most
 * likely read off the gauge that the window is set to, so that unit is put into its heading.
 */
final class PastedTable {
  private static final String PRESSURE = "pressure_";

  private final List<String> lines;
  private final PressureUnit shown;

  private PastedTable(String text, PressureUnit shown) {
    this.lines = new ArrayList<>(text.lines().filter(line -> !line.isBlank()).toList());
    this.shown = shown;
  }

  /**
   * The same table with its unit said. Left as it is where it says a unit itself, or is more than
   * two columns.
   *
   * @param shown the unit of the window
   */
  static String withUnit(String text, PressureUnit shown) {
    return new PastedTable(text, shown).withUnit().orElse(text);
  }

  private Optional<String> withUnit() {
    if (lines.size() < 2 || lines.get(0).startsWith("#")) {
      return Optional.empty();
    }
    Optional<PressureUnit> behind = behindEveryNumber();
    behind.ifPresent(unit -> lines.replaceAll(line -> without(line, unit)));
    String separator = separator(lines.get(lines.size() - 1));
    String[] first = lines.get(0).strip().split(separator, -1);
    boolean twoColumns =
        lines.stream().allMatch(line -> line.strip().split(separator, -1).length == 2);
    if (!twoColumns || behind.isEmpty() && shown == PressureUnit.BAR) {
      return Optional.empty();
    }
    String unit = behind.orElse(shown).symbol();
    String between = separator.equals("\\s+") ? " " : separator;
    if (!hasLetters(lines.get(0))) {
      return Optional.of("time" + between + PRESSURE + unit + "\n" + String.join("\n", lines));
    }
    boolean silent = Arrays.stream(first[1].split("[^A-Za-z0-9/²]+")).noneMatch(this::isUnit);
    if (!silent || !first[0].strip().toLowerCase(Locale.ROOT).startsWith("t")) {
      return Optional.empty();
    }
    lines.set(0, first[0] + between + PRESSURE + unit);
    return Optional.of(String.join("\n", lines));
  }

  private boolean isUnit(String word) {
    return PressureUnit.of(word).isPresent();
  }

  /** A unit that stands behind each number, below a heading if there is one. */
  private Optional<PressureUnit> behindEveryNumber() {
    List<String> numbers = lines.stream().filter(line -> line.matches(".*\\d.*")).toList();
    return PressureFormat.CHOICES.stream()
        .filter(unit -> numbers.stream().allMatch(line -> !without(line, unit).equals(line)))
        .findFirst();
  }

  private static String without(String line, PressureUnit unit) {
    return line.replaceFirst("(?i)(?<=\\d)\\s*" + unit.symbol() + "\\s*$", "");
  }

  private static boolean hasLetters(String line) {
    return line.chars().anyMatch(Character::isLetter);
  }

  private static String separator(String line) {
    if (line.contains("\t")) {
      return "\t";
    }
    if (line.contains(";")) {
      return ";";
    }
    return line.strip().matches(".*\\s.*") ? "\\s+" : ",";
  }
}
