package holdcurve.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.KnownAnswer;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.record.job.Repair;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The case book for other programs: one line a case as CSV, or as JSON. */
public final class CaseTable {
  /** Format and version that such files carry. */
  public static final String FORMAT = "holdcurve-cases/1";

  private CaseTable() {}

  /**
   * Cases as CSV text of format {@value #FORMAT}.
   *
   * @param shown in this order
   */
  public static String csv(CaseBook book, List<CaseEntry> shown) {
    return FigureTable.text(
        FORMAT,
        printer -> {
          boolean head = true;
          for (CaseEntry entry : shown) {
            Map<String, String> cells = cells(book, entry);
            if (head) {
              printer.printRecord(cells.keySet());
              head = false;
            }
            for (String cell : cells.values()) {
              printer.print(SpreadsheetText.harmless(cell));
            }
            printer.println();
          }
        });
  }

  /** Cases as JSON text of format {@value #FORMAT}, and what can't be read. */
  public static String json(CaseBook book, List<CaseEntry> shown) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    ArrayNode cases = root.putArray("cases");
    for (CaseEntry entry : shown) {
      ObjectNode one = cases.addObject();
      cells(book, entry)
          .forEach(
              (name, value) -> {
                if (!value.isEmpty()) {
                  one.put(name, value);
                }
              });
    }
    ArrayNode broken = root.putArray("left_out");
    book.broken()
        .forEach(
            one ->
                broken.addObject().put("file", one.file().toString()).put("reason", one.reason()));
    return JsonFiles.print(root);
  }

  private static Map<String, String> cells(CaseBook book, CaseEntry entry) {
    Map<String, String> cells = new LinkedHashMap<>();
    Optional<Repair> repair = entry.repair();
    cells.put("file", entry.file().toString());
    cells.put("car", entry.car());
    cells.put("car_key", book.correction(entry).car());
    cells.put("date", entry.date());
    cells.put("state", entry.state().words());
    cells.put("verdict", entry.answer().map(KnownAnswer::words).orElse(""));
    cells.put("repairs", entry.repairs() == 0 ? "" : Integer.toString(entry.repairs()));
    cells.put("last_repair", repair.map(one -> one.date().toString()).orElse(""));
    cells.put("repaired_part", repair.map(Repair::part).orElse(""));
    cells.put("repaired_fault", repair.map(Repair::fault).orElse(""));
    cells.put("repair_note", repair.map(Repair::note).orElse(""));
    cells.put("proved", entry.proof().words());
    cells.put("confirmed_fault", book.confirmed(entry).orElse(""));
    return cells;
  }
}
