package holdcurve.ui.window.circuit;

import holdcurve.circuit.Part;
import holdcurve.circuit.Property;
import holdcurve.circuit.Unit;
import holdcurve.saying.Saying;
import holdcurve.ui.window.frame.Scrolled;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The chosen part, each of its values with unit and limits. */
final class PartEditor extends VBox {
  private final CircuitModel model;
  private final Label title = new Label();
  private final Label problem = new Label();
  private final FlowPane values = new FlowPane();
  private Part shown;

  PartEditor(CircuitModel model) {
    this.model = model;
    setId("part-editor");
    getStyleClass().add("hc-part-editor");
    title.getStyleClass().add("hc-heading");
    title.setMinHeight(USE_PREF_SIZE);
    problem.getStyleClass().add("hc-caution");
    problem.setWrapText(true);
    problem.setMinHeight(USE_PREF_SIZE);
    problem.textProperty().bind(model.problemProperty());
    problem.visibleProperty().bind(model.problemProperty().isNotEmpty());
    problem.managedProperty().bind(problem.visibleProperty());
    values.getStyleClass().add("hc-values");
    ScrollPane scroll = Scrolled.downAround(values);
    getChildren().addAll(title, problem, scroll);
    model.chosenProperty().addListener((property, before, now) -> show());
    model.drawingProperty().addListener((property, before, now) -> show());
    model.pressures().unitProperty().addListener((property, before, now) -> build());
    show();
  }

  private void show() {
    Part part = model.chosenPart().orElse(null);
    if (part != shown) {
      boolean another = part == null || shown == null || !part.id().equals(shown.id());
      shown = part;
      if (another) {
        model.problemProperty().set("");
      }
      build();
    }
  }

  private void build() {
    values.getChildren().clear();
    if (shown == null) {
      title.setText(
          "Click a part to see and change its values; the arrow keys go from part to part.");
      return;
    }
    boolean none = shown.kind().properties().isEmpty();
    title.setText(
        PartWords.title(shown)
            + (none ? ": nothing to set." : ". Grey values are assumed; type over what you know."));
    for (Property property : shown.kind().properties()) {
      values.getChildren().add(property.unit() == Unit.FLAG ? flag(property) : value(property));
    }
  }

  private VBox flag(Property property) {
    CheckBox box = new CheckBox(PartWords.name(property));
    box.setSelected(shown.is(property));
    box.setTooltip(new Tooltip(said(property.meaning())));
    box.setOnAction(event -> model.set(property, box.isSelected()));
    return tile(box, new Label(said(property.meaning())));
  }

  private VBox value(Property property) {
    TextField field = new TextField();
    field.setId("value-" + property.stem());
    String now = PartWords.value(shown, property, model.pressures());
    field.setText(shown.states(property) ? now : "");
    field.setPromptText(now);
    field.setPrefColumnCount(6);
    field.setAccessibleText(PartWords.name(property) + ", " + said(property.meaning()));
    field.setTooltip(
        new Tooltip(said(property.meaning()) + ". Default: " + said(property.source()) + "."));
    field.setOnAction(event -> model.set(property, field.getText()));
    Part part = shown;
    field
        .focusedProperty()
        .addListener(
            (observed, before, focused) -> {
              if (!focused && part.id().equals(model.chosenProperty().get()) && part == shown) {
                model.set(property, field.getText());
              }
            });
    Label name = new Label(PartWords.name(property));
    name.setLabelFor(field);
    name.getStyleClass().add("hc-strong");
    Label unit = new Label(PartWords.unit(property, model.pressures()));
    unit.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(field, unit);
    line.getStyleClass().add("hc-line");
    return tile(name, line, new Label(PartWords.limits(property, model.pressures())));
  }

  private String said(String words) {
    return model.pressures().text(Saying.stated(words));
  }

  private static VBox tile(javafx.scene.Node... nodes) {
    VBox tile = new VBox(nodes);
    Label last = (Label) nodes[nodes.length - 1];
    last.getStyleClass().addAll("hc-muted", "hc-small");
    last.setWrapText(true);
    tile.getStyleClass().add("hc-value");
    return tile;
  }

  /** Puts the keyboard into the first value. */
  void edit() {
    if (values.lookup(".text-field") != null) {
      values.lookup(".text-field").requestFocus();
    }
  }
}
