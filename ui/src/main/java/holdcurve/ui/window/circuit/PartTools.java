package holdcurve.ui.window.circuit;

import holdcurve.common.message.PartName;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;

/** What can be done with the chosen part as a whole: name, add after it, move, remove. */
final class PartTools extends HBox {
  private final CircuitModel model;
  private final TextField name = new TextField();
  private final CheckBox fresh = new CheckBox("New part");
  private String shown = "";
  private final MenuButton add = new MenuButton("Add after it");

  PartTools(CircuitModel model) {
    this.model = model;
    getStyleClass().addAll("hc-line", "hc-compact");
    name.setId("part-name");
    name.setAccessibleText("Name of the part");
    name.setPrefColumnCount(12);
    name.setOnAction(event -> rename(shown));
    name.focusedProperty()
        .addListener(
            (property, before, focused) -> {
              if (!focused) {
                rename(shown);
                show();
              }
            });
    Label called = new Label("Name");
    called.setLabelFor(name);
    called.setMinWidth(USE_PREF_SIZE);
    add.setId("add-part");
    add.setMinWidth(USE_PREF_SIZE);
    add.getItems().setAll(kinds());
    List<Button> buttons =
        List.of(
            button("move-back", "\u25C0 Move", "Move against the flow", () -> model.move(-1)),
            button("move-on", "Move \u25B6", "Move with the flow", () -> model.move(1)),
            button("remove-part", "Remove", "Remove the part", model::remove));
    fresh.setId("new-part");
    fresh.setMinWidth(USE_PREF_SIZE);
    fresh.setTooltip(new Tooltip("Its faults are then ten times rarer than usual"));
    fresh.setOnAction(event -> model.setNew(fresh.isSelected()));
    fresh.managedProperty().bind(fresh.visibleProperty());
    getChildren().addAll(called, name, add);
    getChildren().addAll(buttons);
    getChildren().add(fresh);
    model.ofPartsProperty().addListener((property, before, now) -> showNew());
    model.jobProperty().addListener((property, before, now) -> showNew());
    model.chosenProperty().addListener((property, before, now) -> turn());
    model.drawingProperty().addListener((property, before, now) -> show());
    show();
  }

  private static Button button(String id, String text, String spoken, Runnable what) {
    Button button = new Button(text);
    button.setId(id);
    button.setMinWidth(USE_PREF_SIZE);
    button.setAccessibleText(spoken);
    button.setOnAction(event -> what.run());
    return button;
  }

  private List<MenuItem> kinds() {
    List<MenuItem> items = new ArrayList<>();
    for (PartKind kind : CircuitModel.addable()) {
      MenuItem item = new MenuItem(kind.title());
      item.setId("add-" + kind.id());
      item.setOnAction(event -> model.add(kind));
      items.add(item);
    }
    return items;
  }

  /** A name typed but not entered counts when another part is turned to. */
  private void turn() {
    String left = shown;
    String typed = name.getText();
    show();
    if (!left.equals(shown)) {
      model.rename(left, typed);
    }
  }

  private void rename(String part) {
    model.rename(part, name.getText());
  }

  private void show() {
    shown = model.chosenProperty().get();
    Part part = model.chosenPart().orElse(null);
    setVisible(part != null);
    if (part != null) {
      showNew();
      name.setText(PartName.of(part.id()));
      boolean fixed = !CircuitEdits.isMovable(part);
      getChildren().stream().filter(Button.class::isInstance).forEach(b -> b.setDisable(fixed));
    }
  }

  private void showNew() {
    fresh.setVisible(model.ofPartsProperty().get().containsKey(model.chosenProperty().get()));
    fresh.setSelected(model.isNew());
  }

  /** The same for the right button of the mouse. */
  ContextMenu menu() {
    Menu kinds = new Menu("Add after it");
    kinds.getItems().setAll(kinds());
    return new ContextMenu(
        kinds,
        item("Move with the flow", () -> model.move(1)),
        item("Move against the flow", () -> model.move(-1)),
        item("Rename", this::rename),
        item("Remove", model::remove));
  }

  private static MenuItem item(String text, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setOnAction(event -> what.run());
    return item;
  }

  /** Puts the keyboard on the name. */
  void rename() {
    name.requestFocus();
    name.selectAll();
  }

  /** Keys that do the same while a part has the keyboard. */
  void key(KeyEvent event) {
    KeyCode code = event.getCode();
    if (code == KeyCode.INSERT) {
      add.requestFocus();
      add.show();
    } else if (code == KeyCode.DELETE) {
      model.remove();
    } else if (event.isAltDown() && code == KeyCode.RIGHT) {
      model.move(1);
    } else if (event.isAltDown() && code == KeyCode.LEFT) {
      model.move(-1);
    } else {
      return;
    }
    event.consume();
  }
}
