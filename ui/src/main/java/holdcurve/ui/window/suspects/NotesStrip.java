package holdcurve.ui.window.suspects;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** What was assumed and what was understood of the files; folded until asked for. */
final class NotesStrip extends TitledPane {
  private final SuspectsModel model;
  private final VBox lines = new VBox(4);

  NotesStrip(SuspectsModel model) {
    this.model = model;
    setId("notes");
    getStyleClass().add("hc-notes");
    setExpanded(false);
    setAnimated(false);
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(110);
    setContent(scroll);
    model.job().addListener((property, before, now) -> update());
    model.ranking().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    List<String> notes = model.notes();
    setText("Assumptions and what was read from the files (" + notes.size() + ")");
    lines.getChildren().setAll(notes.stream().map(NotesStrip::line).toList());
    setVisible(!notes.isEmpty());
    setManaged(!notes.isEmpty());
  }

  private static Label line(String note) {
    Label label = new Label("–  " + note);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
