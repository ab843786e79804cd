package holdcurve.ui.window.circuit;

import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.ui.window.frame.Scrolled;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
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
  private final List<Runnable> refreshers = new ArrayList<>();
  private final List<Runnable> typed = new ArrayList<>();
  private final PartTools tools;
  private Part shown;
  private boolean more;

  PartEditor(CircuitModel model) {
    this.model = model;
    tools = new PartTools(model);
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
    HBox head = new HBox(title, tools);
    head.getStyleClass().add("hc-line");
    getChildren().addAll(head, problem, scroll);
    model.chosenProperty().addListener((property, before, now) -> show());
    model.drawingProperty().addListener((property, before, now) -> show());
    model.pressures().unitProperty().addListener((property, before, now) -> refresh());
    build();
    show();
  }

  private void show() {
    Part part = model.chosenPart().orElse(null);
    if (part == shown) {
      return;
    }
    Part before = shown;
    shown = part;
    if (part != null && before != null && part.id().equals(before.id())) {
      refresh();
      return;
    }
    model.problemProperty().set("");
    List<Runnable> left = List.copyOf(typed);
    build();
    left.forEach(Runnable::run);
  }

  private void build() {
    typed.clear();
    refreshers.clear();
    values.getChildren().clear();
    if (shown == null) {
      title.setText("Click a part to change it, or go there with the arrow keys.");
      return;
    }
    title.setText(PartWords.title(shown));
    List<Property> seldom = new ArrayList<>();
    for (Property property : shown.kind().properties()) {
      if (more || PartWords.isUsual(shown, property)) {
        values.getChildren().add(property.unit() == Unit.FLAG ? flag(property) : value(property));
      } else {
        seldom.add(property);
      }
    }
    if (more || !seldom.isEmpty()) {
      values.getChildren().add(more(seldom.size()));
    }
    refresh();
  }

  private Button more(int hidden) {
    Button button = new Button(more ? "Fewer" : "More (" + hidden + ")");
    button.setId("more-values");
    button.setAccessibleText(more ? "Show fewer values" : hidden + " more values, seldom set");
    button.setOnAction(
        event -> {
          List<Runnable> left = List.copyOf(typed);
          left.forEach(Runnable::run);
          more = !more;
          build();
          values.lookup("#more-values").requestFocus();
        });
    return button;
  }

  /** Shows the values as they are now in the fields that stand: the keyboard stays where it is. */
  private void refresh() {
    refreshers.forEach(Runnable::run);
  }

  private VBox flag(Property property) {
    CheckBox box = new CheckBox(PartWords.name(property));
    box.setId("value-" + property.stem());
    box.setTooltip(new Tooltip(said(property.meaning())));
    box.setOnAction(
        event -> {
          model.set(property, box.isSelected());
          refresh();
        });
    refreshers.add(() -> box.setSelected(shown.is(property)));
    return tile(box, new Label(said(property.meaning())));
  }

  private VBox value(Property property) {
    TextField field = new TextField();
    field.setId("value-" + property.stem());
    field.setPrefColumnCount(6);
    field.setMinWidth(Region.USE_PREF_SIZE);
    Label unit = new Label();
    unit.setMinWidth(Region.USE_PREF_SIZE);
    Label limits = new Label();
    refreshers.add(() -> fill(property, field, unit, limits));
    String part = shown.id();
    Runnable enter = () -> model.set(part, property, field.getText());
    typed.add(
        () -> {
          if (!field.getText().equals(field.getUserData())) {
            enter.run();
          }
        });
    field.setOnAction(event -> enter.run());
    field
        .focusedProperty()
        .addListener(
            (observed, before, focused) -> {
              if (!focused && part.equals(model.chosenProperty().get())) {
                enter.run();
              }
            });
    Label name = new Label(PartWords.name(property));
    name.setLabelFor(field);
    name.getStyleClass().add("hc-strong");
    HBox line = new HBox(field, unit);
    line.getStyleClass().add("hc-line");
    return tile(name, line, limits);
  }

  private void fill(Property property, TextField field, Label unit, Label limits) {
    String now = PartWords.value(shown, property, model.pressures());
    String stated = shown.states(property) ? now : "";
    if (!field.getText().equals(stated)) {
      field.setText(stated);
    }
    field.setUserData(stated);
    field.setPromptText(now);
    field.setAccessibleText(PartWords.name(property) + ", " + said(property.meaning()));
    field.setTooltip(
        new Tooltip(said(property.meaning()) + ". Default: " + said(property.source()) + "."));
    unit.setText(PartWords.unit(property, model.pressures()));
    limits.setText(PartWords.limits(property, model.pressures()));
  }

  private String said(String words) {
    return model.pressures().text(Message.stated(words));
  }

  private static VBox tile(javafx.scene.Node... nodes) {
    VBox tile = new VBox(nodes);
    Label last = (Label) nodes[nodes.length - 1];
    last.getStyleClass().addAll("hc-muted", "hc-small");
    last.setWrapText(true);
    tile.getStyleClass().add("hc-value");
    return tile;
  }

  /** What can be done with the chosen part as a whole. */
  PartTools tools() {
    return tools;
  }

  /** Puts the keyboard into the first value. */
  void edit() {
    if (values.lookup(".text-field") != null) {
      values.lookup(".text-field").requestFocus();
    }
  }
}
