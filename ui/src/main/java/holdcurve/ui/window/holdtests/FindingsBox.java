package holdcurve.ui.window.holdtests;

import holdcurve.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** What was seen, counted or drawn off beside the gauge. */
final class FindingsBox extends VBox {
  private final HoldTestsModel model;
  private final VBox list = new VBox();
  private final ComboBox<FindingForm> kind = new ComboBox<>();
  private final ComboBox<String> part = new ComboBox<>();
  private final HBox numbers = new HBox();
  private final List<TextField> fields = new ArrayList<>();
  private final Label wrong = StepsBox.words("", "hc-small");

  FindingsBox(HoldTestsModel model) {
    this.model = model;
    setId("findings");
    getStyleClass().add("hc-about");
    kind.setId("finding-kind");
    kind.setMaxWidth(Double.MAX_VALUE);
    kind.getItems().setAll(FindingForm.values());
    kind.setConverter(titles());
    kind.setPromptText("Note what you see …");
    kind.valueProperty().addListener((property, before, now) -> ask());
    part.setId("finding-part");
    part.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(part, Priority.ALWAYS);
    numbers.getStyleClass().add("hc-line");
    Button add = new Button("Add");
    add.setId("finding-add");
    add.setMinWidth(USE_PREF_SIZE);
    add.disableProperty().bind(kind.valueProperty().isNull());
    add.setOnAction(event -> add());
    HBox line = new HBox(part, add);
    line.getStyleClass().add("hc-line");
    wrong.managedProperty().bind(wrong.textProperty().isNotEmpty());
    getChildren()
        .addAll(StepsBox.words("Findings", "hc-heading"), list, kind, numbers, line, wrong);
    model.testProperty().addListener((property, before, now) -> update());
    ask();
    update();
  }

  private static StringConverter<FindingForm> titles() {
    return new StringConverter<>() {
      @Override
      public String toString(FindingForm form) {
        return form == null ? "" : form.title();
      }

      @Override
      public FindingForm fromString(String title) {
        return null;
      }
    };
  }

  private void ask() {
    FindingForm form = kind.getValue();
    List<String> parts =
        form == null || model.job() == null ? List.of() : form.parts(model.job().circuit());
    part.getItems().setAll(parts);
    part.getSelectionModel().selectFirst();
    part.setVisible(!parts.isEmpty());
    fields.clear();
    numbers.getChildren().clear();
    if (form != null) {
      form.fields().forEach(this::addField);
    }
    numbers.setManaged(!fields.isEmpty());
    wrong.setText("");
  }

  private void addField(String name) {
    TextField field = new TextField();
    field.setId("finding-" + name);
    field.setPrefColumnCount(4);
    field.setMinWidth(50);
    Label label = new Label(name);
    label.setMinWidth(USE_PREF_SIZE);
    label.setLabelFor(field);
    fields.add(field);
    numbers.getChildren().addAll(label, field);
  }

  private void add() {
    List<String> typed = fields.stream().map(TextField::getText).toList();
    Optional<Finding> finding = kind.getValue().finding(part.getValue(), typed, model.pressures());
    if (finding.isPresent()) {
      model.add(finding.get());
      kind.setValue(null);
    } else {
      wrong.setText("Give each number, such as " + example() + ".");
    }
  }

  private String example() {
    return switch (kind.getValue()) {
      case DRAWN_OFF ->
          "2 mL from " + model.pressures().number(2e5) + " to " + model.pressures().text(1.4e5);
      default -> "3 drops in 5 minutes";
    };
  }

  private void update() {
    List<Finding> findings = model.job() == null ? List.of() : model.job().findings();
    list.getChildren().setAll(findings.stream().map(this::row).toList());
  }

  private HBox row(Finding finding) {
    Label words = StepsBox.words(finding.inWords());
    HBox.setHgrow(words, Priority.ALWAYS);
    Button remove = new Button("×");
    remove.setAccessibleText("Remove: " + finding.inWords());
    remove.getStyleClass().add("hc-flat");
    remove.setMinWidth(USE_PREF_SIZE);
    remove.setOnAction(event -> model.remove(finding));
    HBox row = new HBox(words, remove);
    row.getStyleClass().add("hc-line");
    return row;
  }
}
