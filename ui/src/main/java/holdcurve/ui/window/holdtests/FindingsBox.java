package holdcurve.ui.window.holdtests;

import holdcurve.record.finding.Finding;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Texts;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
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

/** What was seen, counted or drawn off beside the gauge. */
final class FindingsBox extends VBox {
  private final HoldTestsModel model;
  private final VBox list = new VBox();
  private final ComboBox<FindingForm> kind = new ComboBox<>();
  private final Label caution = Texts.caution("");
  private final ComboBox<String> part = new ComboBox<>();
  private final HBox numbers = new HBox();
  private final TextField date = new TextField();
  private final List<TextField> fields = new ArrayList<>();
  private final Label wrong = Texts.words("", "hc-small");

  FindingsBox(HoldTestsModel model) {
    this.model = model;
    setId("findings");
    getStyleClass().add("hc-about");
    kind.setId("finding-kind");
    kind.setAccessibleText("What was seen");
    kind.setMaxWidth(Double.MAX_VALUE);
    kind.getItems().setAll(FindingForm.values());
    Named.in(kind, "Note what you see …", FindingForm::title);
    kind.valueProperty().addListener((property, before, now) -> ask());
    part.setId("finding-part");
    part.setAccessibleText("Part where it was seen");
    part.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(part, Priority.ALWAYS);
    numbers.getStyleClass().add("hc-line");
    date.setId("finding-date");
    date.setPrefColumnCount(8);
    Label on = new Label("Found on");
    on.setMinWidth(USE_PREF_SIZE);
    on.setLabelFor(date);
    HBox when = new HBox(on, date);
    when.getStyleClass().add("hc-line");
    when.managedProperty().bind(kind.valueProperty().isNotNull());
    when.visibleProperty().bind(when.managedProperty());
    Button add = new Button("Add");
    add.setId("finding-add");
    add.setMinWidth(USE_PREF_SIZE);
    add.disableProperty().bind(kind.valueProperty().isNull());
    add.setOnAction(event -> add());
    HBox line = new HBox(part, add);
    line.getStyleClass().add("hc-line");
    wrong.managedProperty().bind(wrong.textProperty().isNotEmpty());
    caution.setId("finding-caution");
    caution.managedProperty().bind(caution.visibleProperty());
    getChildren()
        .addAll(
            Texts.words("Findings", "hc-heading"), list, kind, caution, numbers, when, line, wrong);
    model.job().addListener((property, before, now) -> update());
    model.pressures().unitProperty().addListener((property, before, now) -> update());
    ask();
    update();
  }

  private void ask() {
    FindingForm form = kind.getValue();
    List<String> parts =
        form == null || model.hold().job() == null
            ? List.of()
            : form.parts(model.hold().job().circuit());
    part.getItems().setAll(parts);
    part.getSelectionModel().selectFirst();
    part.setVisible(!parts.isEmpty());
    caution.setVisible(form != null);
    caution.setText(form == null ? "" : form.caution());
    date.setText(model.findings().day().toString());
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
    Optional<LocalDate> day = day();
    if (finding.isEmpty()) {
      wrong.setText("Give each number, such as " + example() + ".");
    } else if (day.isEmpty()) {
      wrong.setText("Write the date as year, month and day: " + model.findings().day() + ".");
    } else {
      model.findings().add(finding.get().on(day.get()));
      kind.setValue(null);
    }
  }

  private Optional<LocalDate> day() {
    try {
      return Optional.of(LocalDate.parse(date.getText().strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
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
    List<Finding> findings = model.findings().all();
    list.getChildren().setAll(findings.stream().map(this::row).toList());
  }

  private HBox row(Finding finding) {
    Label words = Texts.words(finding.inDatedWords(model.pressures().unit()));
    HBox.setHgrow(words, Priority.ALWAYS);
    Button remove = new Button("×");
    remove.setAccessibleText("Remove: " + finding.inDatedWords(model.pressures().unit()));
    remove.getStyleClass().add("hc-flat");
    remove.setMinWidth(USE_PREF_SIZE);
    remove.setOnAction(event -> model.findings().remove(finding));
    HBox row = new HBox(words, remove);
    row.getStyleClass().add("hc-line");
    return row;
  }
}
