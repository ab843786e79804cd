package holdcurve.ui.window.benchsheet;

import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * One firing, or one watch without firing, as typed.
 *
 * @param injector its number or name, or {@value #IDLE}
 * @param before gauge before, as typed in the unit shown
 * @param after gauge after, likewise
 * @param later a third reading, likewise; empty where none was taken
 */
record DropRow(
    StringProperty injector, StringProperty before, StringProperty after, StringProperty later) {
  /** Stands for no injector: what is lost without firing. */
  static final String IDLE = "idle";

  DropRow(String injector) {
    this(
        new SimpleStringProperty(injector),
        new SimpleStringProperty(""),
        new SimpleStringProperty(""),
        new SimpleStringProperty(""));
  }

  List<StringProperty> cells() {
    return List.of(injector, before, after, later);
  }

  /** Whether neither reading was typed. */
  boolean isEmpty() {
    return before.get().isBlank() && after.get().isBlank();
  }
}
