package holdcurve.ui.window.benchsheet;

import java.util.EnumMap;
import java.util.Map;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One line of the table, as typed. */
final class SheetRow {
  private final StringProperty id;
  private final Map<SheetColumn, StringProperty> cells = new EnumMap<>(SheetColumn.class);

  SheetRow(String id) {
    this.id = new SimpleStringProperty(id);
    for (SheetColumn column : SheetColumn.values()) {
      cells.put(column, new SimpleStringProperty(""));
    }
  }

  /** Number or name of the injector. */
  StringProperty id() {
    return id;
  }

  StringProperty cell(SheetColumn column) {
    return cells.get(column);
  }

  String text(SheetColumn column) {
    return cell(column).get().strip();
  }

  /** Whether nothing was typed but perhaps the number. */
  boolean isEmpty() {
    return cells.values().stream().allMatch(cell -> cell.get().isBlank());
  }
}
