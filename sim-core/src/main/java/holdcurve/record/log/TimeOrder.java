package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.record.log.RowReader.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Brings readings into order of time where that is safe, and says what it did. */
final class TimeOrder {
  /** So many readings in a row behind the clock are no swap any more. */
  private static final int STAYS_BACK = 3;

  private static final int NAMED = 3;
  private static final double A_DAY = 86_400;
  private static final double NEARLY_A_DAY = 72_000;

  private final LogText source;
  private final Layout layout;
  private final List<String> said = new ArrayList<>();

  TimeOrder(LogText source, Layout layout) {
    this.source = source;
    this.layout = layout;
  }

  List<String> said() {
    return said;
  }

  /** The rows in order of time; equal times stay in the order of the file. */
  List<Row> sort(List<Row> rows) {
    List<Row> sorted = new ArrayList<>(rows);
    if (runsBackwards(rows)) {
      Collections.reverse(sorted);
      said.add("The readings ran from the last to the first and were turned round.");
    } else {
      List<Row> behind = behind(rows);
      say(behind);
      sorted.sort(Comparator.comparingDouble(row -> row.reading().time()));
    }
    sayRepeated(sorted);
    return sorted;
  }

  private static boolean runsBackwards(List<Row> rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (time(rows, i) > time(rows, i - 1)) {
        return false;
      }
    }
    return rows.size() > 1 && time(rows, rows.size() - 1) < time(rows, 0);
  }

  private List<Row> behind(List<Row> rows) {
    List<Row> behind = new ArrayList<>();
    int latest = 0;
    int run = 0;
    for (int i = 1; i < rows.size(); i++) {
      run = time(rows, i) < time(rows, latest) ? run + 1 : 0;
      latest = run == 0 ? i : latest;
      if (run > 0) {
        behind.add(rows.get(i));
      }
      boolean restarted = run > 0 && i >= STAYS_BACK && time(rows, i) <= time(rows, 0);
      if (restarted || run >= STAYS_BACK) {
        throw jump(rows.get(latest), rows.get(i - run + 1));
      }
    }
    return behind;
  }

  private InputException jump(Row from, Row to) {
    double back = from.reading().time() - to.reading().time();
    return InputException.at(
        source.name(),
        "line " + to.line(),
        "the time goes back from '" + text(from) + "' to '" + text(to) + "'",
        back > NEARLY_A_DAY && back < A_DAY
            ? "where a clock passed midnight, count the time from the pump stop"
            : "keep one log in a file, or correct the time in line " + from.line());
  }

  private void say(List<Row> behind) {
    for (Row row : behind.subList(0, Math.min(NAMED, behind.size()))) {
      said.add("Line " + row.line() + " ('" + text(row) + "') follows a later time: sorted in.");
    }
    if (behind.size() > NAMED) {
      said.add((behind.size() - NAMED) + " more lines follow later times: sorted in.");
    }
  }

  private void sayRepeated(List<Row> rows) {
    int groups = 0;
    int repeats = 0;
    for (int i = 1, size = 1; i <= rows.size(); i++) {
      if (i < rows.size() && time(rows, i) == time(rows, i - 1)) {
        size++;
        repeats++;
        continue;
      }
      if (size > 1 && ++groups <= NAMED) {
        said.add(
            howMany(size)
                + " readings at "
                + text(rows.get(i - 1))
                + " were "
                + (size == 2 ? "both" : "all")
                + " kept.");
      }
      size = 1;
    }
    if (groups > NAMED) {
      said.add("Times repeat " + repeats + " times in all; every reading was kept.");
    }
  }

  private static String howMany(int size) {
    return size == 2 ? "Two" : String.valueOf(size);
  }

  private String text(Row row) {
    return layout.separator().split(source.line(row.line())).get(layout.time());
  }

  private static double time(List<Row> rows, int i) {
    return rows.get(i).reading().time();
  }
}
