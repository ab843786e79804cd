package holdcurve.record.log;

import holdcurve.record.log.RowReader.Row;
import java.util.List;
import java.util.Optional;

/**
 * Whether a log looks cut off in its last pressure: no line end behind it, and fewer decimals than
 * in every line before.
 */
record CutEnd(LogText source, Layout layout, List<Row> rows) {
  private static final int LEAST_ROWS = 3;
  private static final int LOOKED_AT = 400;

  Optional<String> sentence() {
    String text = source.text();
    boolean ended = text.endsWith("\n") || text.endsWith("\r");
    if (ended || rows.size() < LEAST_ROWS) {
      return Optional.empty();
    }
    Row last = rows.get(rows.size() - 1);
    int decimals = decimals(last);
    boolean fewer =
        rows.subList(0, rows.size() - 1).stream()
            .limit(LOOKED_AT)
            .allMatch(row -> decimals(row) > decimals);
    return fewer && endsWithPressure(last)
        ? Optional.of(
            "The file may be cut off: its last line, "
                + last.line()
                + ", has a pressure with fewer figures than the others and no line end.")
        : Optional.empty();
  }

  private boolean endsWithPressure(Row row) {
    String written = cell(row);
    return !written.isEmpty() && source.text().endsWith(written);
  }

  private int decimals(Row row) {
    String written = cell(row);
    int mark = Math.max(written.indexOf('.'), written.indexOf(','));
    return mark < 0 ? 0 : written.length() - mark - 1;
  }

  private String cell(Row row) {
    List<String> cells = layout.separator().split(source.line(row.line()));
    return layout.pressure() < cells.size() ? cells.get(layout.pressure()) : "";
  }
}
