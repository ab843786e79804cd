package holdcurve.ui.window.repaircheck;

import holdcurve.common.message.PartName;
import holdcurve.physics.circuit.Part;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Objects;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;

/** Where a repair is noted, so that holds before and after it are told apart. */
final class RepairNote extends HBox {
  private final RepairCheckModel model;
  private final ComboBox<String> part = new ComboBox<>();
  private String proposed = "";
  private final TextField note = new TextField();

  RepairNote(RepairCheckModel model) {
    this.model = model;
    part.setId("repaired-part");
    part.setPromptText("part");
    note.setId("repair-note");
    note.setPromptText("what was done");
    HBox.setHgrow(note, Priority.ALWAYS);
    Button add = new Button("Note");
    add.setId("note-repair");
    add.setMinWidth(Region.USE_PREF_SIZE);
    add.disableProperty().bind(part.valueProperty().isNull());
    add.setOnAction(event -> add());
    note.setOnAction(event -> add());
    Label title = new Label("Repaired today:");
    title.setMinWidth(Region.USE_PREF_SIZE);
    setStyle("-fx-spacing: 0.7em; -fx-alignment: center-left;");
    getChildren().addAll(title, part, note, add);
    model.jobProperty().addListener((property, before, now) -> update(now));
    update(model.jobProperty().get());
    model.namedPartProperty().addListener((property, before, now) -> propose());
    part.setConverter(new PartNames());
    part.setAccessibleText("Part that was repaired");
    note.setAccessibleText("What was done");
    propose();
  }

  /** Parts as people say them. */
  private static final class PartNames extends StringConverter<String> {
    @Override
    public String toString(String id) {
      return id == null ? "" : PartName.of(id);
    }

    @Override
    public String fromString(String text) {
      throw new UnsupportedOperationException("parts are chosen, not typed");
    }
  }

  /** What the person chose stays. */
  private void propose() {
    String named = model.namedPartProperty().get();
    if (part.getValue() == null || part.getValue().equals(proposed)) {
      proposed = named;
      part.setValue(part.getItems().contains(named) ? named : null);
    }
  }

  private void update(Job job) {
    List<String> parts =
        job == null ? List.of() : job.circuit().parts().stream().map(Part::id).toList();
    if (!Objects.equals(parts, part.getItems())) {
      part.getItems().setAll(parts);
    }
  }

  private void add() {
    if (part.getValue() != null && model.noteRepair(part.getValue(), note.getText())) {
      part.setValue(null);
      note.clear();
    }
  }
}
