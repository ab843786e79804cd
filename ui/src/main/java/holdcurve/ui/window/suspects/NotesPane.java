package holdcurve.ui.window.suspects;

import holdcurve.ui.window.frame.Scrolled;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What was assumed and what was understood of the files. */
final class NotesPane extends VBox {
  private final SuspectsModel model;
  private final ReadOnlyIntegerWrapper count = new ReadOnlyIntegerWrapper();
  private final VBox lines = new VBox(4);

  NotesPane(SuspectsModel model) {
    this.model = model;
    setId("notes");
    getStyleClass().add("hc-drawer");
    ScrollPane scroll = Scrolled.down(lines);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    model.job().addListener((property, before, now) -> update());
    model.ranking().addListener((property, before, now) -> update());
    model.unit().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    List<String> notes = model.notes();
    count.set(notes.size());
    lines.getChildren().setAll(notes.stream().map(NotesPane::line).toList());
    if (notes.isEmpty()) {
      lines.getChildren().add(SuspectLine.words("Nothing was assumed so far.", "hc-muted"));
    }
  }

  /** How many there are. */
  ReadOnlyIntegerProperty countProperty() {
    return count.getReadOnlyProperty();
  }

  private static Label line(String note) {
    Label label = new Label("–  " + note);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
