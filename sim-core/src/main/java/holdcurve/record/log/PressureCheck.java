package holdcurve.record.log;

import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.record.log.CellReader.Unusable;
import holdcurve.record.log.RowReader.Row;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether the pressures of a log can be what the gauge showed.
 *
 * @param rows in order of time, as in the log
 * @param unusable pressures out of any range
 */
record PressureCheck(
    LogText source, Layout layout, GaugeLog log, List<Row> rows, List<Unusable> unusable) {
  private static final int MOST = 50;
  private static final Pattern NUMBER = Pattern.compile("([0-9]*)([.,]?)([0-9]*)");

  /**
   * Refuses what can't be used, all of it at once.
   *
   * @param refused which odd readings are refused; the rest is asked about
   */
  void require(Predicate<OddReading> refused) {
    if (unusable.size() * 2 > rows.size()) {
      Unusable first = unusable.get(0);
      String alike =
          unusable.size() == 1
              ? ""
              : ", like " + unusable.size() + " of " + rows.size() + " pressures";
      throw at(first.line(), first.problem() + alike, first.remedy());
    }
    Map<Integer, InputException> byLine = new TreeMap<>();
    for (Unusable bad : unusable.subList(0, Math.min(MOST, unusable.size()))) {
      byLine.put(bad.line(), at(bad.line(), bad.problem(), bad.remedy()));
    }
    for (OddReading odd : odd()) {
      int line = line(odd);
      if (byLine.containsKey(line)) {
        byLine.put(line, at(line, problem(odd), "write " + meant(odd) + " if that was meant"));
      } else if (refused.test(odd)) {
        byLine.put(line, at(line, problem(odd), OddReading.remedy(meant(odd))));
      }
    }
    InputErrors troubles = new InputErrors();
    byLine.values().forEach(troubles::add);
    troubles.refuse();
  }

  /** What is worth a look and can be used. */
  List<String> doubts() {
    return odd().stream()
        .map(
            odd ->
                "Line %d: %s; %s."
                    .formatted(line(odd), problem(odd), OddReading.remedy(meant(odd))))
        .toList();
  }

  /** Finding a line again takes time, so only some of a great many. */
  private List<OddReading> odd() {
    return OddReading.in(log).stream().limit(MOST).toList();
  }

  private int line(OddReading odd) {
    return rows.get(odd.index()).line();
  }

  private String problem(OddReading odd) {
    return "the pressure '" + cell(line(odd)) + "' " + odd.problem();
  }

  private InputException at(int line, String problem, String remedy) {
    return InputException.at(source.name(), "line " + line, problem, remedy);
  }

  private String cell(int line) {
    return layout.separator().split(source.line(line)).get(layout.pressure());
  }

  private String meant(OddReading odd) {
    return moved(cell(line(odd)), odd.shift())
        .orElseGet(() -> NumberText.few(PressureUnit.BAR.fromPascal(odd.meant())) + " bar");
  }

  /** The number as it was written, with its decimal mark elsewhere. */
  static Optional<String> moved(String cell, int places) {
    Matcher written = NUMBER.matcher(cell);
    if (!written.matches() || written.group(1).isEmpty()) {
      return Optional.empty();
    }
    String moved = new BigDecimal(cell.replace(',', '.')).movePointRight(places).toPlainString();
    return Optional.of(written.group(2).equals(",") ? moved.replace('.', ',') : moved);
  }
}
