package holdcurve.ui.window.holdtests;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The holds of the job, and the name of the one that is shown. */
final class TestBar extends HBox {
  private final HoldTestsModel model;
  private final Runnable read;
  private final FlowPane holds = new FlowPane();
  private final TextField name = new TextField();

  /**
   * @param read puts the keyboard where readings are typed, and Space is the watch
   */
  TestBar(HoldTestsModel model, Runnable read) {
    this.model = model;
    this.read = read;
    setId("holds");
    getStyleClass().add("hc-test-bar");
    holds.getStyleClass().add("hc-test-list");
    HBox.setHgrow(holds, Priority.ALWAYS);
    name.setAccessibleText("Name of the hold");
    name.setPrefColumnCount(14);
    name.setMinWidth(120);
    name.setOnAction(event -> commit());
    name.focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                commit();
              }
            });
    Label label = new Label("Name");
    label.setLabelFor(name);
    label.setMinWidth(USE_PREF_SIZE);
    Button remove = new Button("Remove");
    remove.setMinWidth(USE_PREF_SIZE);
    remove.setOnAction(event -> model.hold().removeTest());
    remove.disableProperty().bind(model.hold().testProperty().isNull());
    getChildren().addAll(holds, label, name, remove);
    model.hold().testIds().addListener((ListChangeListener<String>) change -> fill());
    model.hold().idProperty().addListener((property, before, now) -> fill());
    fill();
  }

  private void fill() {
    ToggleGroup group = new ToggleGroup();
    holds.getChildren().clear();
    for (String id : model.hold().testIds()) {
      ToggleButton button = new ToggleButton(id);
      button.setToggleGroup(group);
      button.setSelected(id.equals(model.hold().idProperty().get()));
      button.setOnAction(
          event -> {
            button.setSelected(true);
            model.hold().idProperty().set(id);
            read.run();
          });
      holds.getChildren().add(button);
    }
    Button add = new Button("+ New hold");
    add.setId("add-hold");
    add.setOnAction(
        event -> {
          model.hold().addTest("hold");
          read.run();
        });
    holds.getChildren().add(add);
    name.setText(model.hold().idProperty().get());
    name.setDisable(model.hold().testIds().isEmpty());
  }

  private void commit() {
    model.hold().rename(name.getText());
    name.setText(model.hold().idProperty().get());
  }

  /** Turns to the next or previous hold, round at the ends. */
  void go(int step) {
    int count = model.hold().testIds().size();
    if (count > 0) {
      int now = model.hold().testIds().indexOf(model.hold().idProperty().get());
      model.hold().idProperty().set(model.hold().testIds().get(Math.floorMod(now + step, count)));
    }
  }
}
