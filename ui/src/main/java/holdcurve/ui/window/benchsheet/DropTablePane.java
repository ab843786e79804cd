package holdcurve.ui.window.benchsheet;

import holdcurve.bench.droptest.FiringSteps;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Where a drop test is typed: how it was done above, a line for each firing below. */
final class DropTablePane extends VBox {
  /** Columns of the readings. */
  private static final int BEFORE = 2;

  private static final int AFTER = 3;

  private final DropTestModel model;
  private final GridPane grid = new GridPane();

  /**
   * @param open asks for a file and reads it
   * @param paste reads the clipboard
   */
  DropTablePane(DropTestModel model, Runnable open, Runnable paste) {
    this.model = model;
    getStyleClass().add("hc-sheet");
    grid.setId("drop-rows");
    grid.getStyleClass().add("hc-sheet-rows");
    for (double share : new double[] {9, 22, 23, 23, 23}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(share);
      grid.getColumnConstraints().add(column);
    }
    model.rows().addListener((ListChangeListener<DropRow>) change -> fill());
    fill();
    ScrollPane scroll = Scrolled.downAround(grid);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox top = new VBox(Texts.caution(StepCautions.FIRING), steps(), folded(settings()));
    top.getStyleClass().add("hc-drop-top");
    getChildren().addAll(top, scroll, buttons(open, paste));
  }

  /** Folded once it was opened and read; the cautions above stay. */
  private static TitledPane steps() {
    VBox lines = new VBox();
    lines.getStyleClass().add("hc-departures");
    List<String> steps = FiringSteps.all();
    for (int i = 0; i < steps.size(); i++) {
      lines.getChildren().add(Texts.words((i + 1) + ". " + steps.get(i)));
    }
    TitledPane pane = new TitledPane("How to fire one injector, step by step", lines);
    pane.setId("drop-steps");
    pane.getStyleClass().add("hc-section");
    pane.setAnimated(false);
    pane.setExpanded(false);
    return pane;
  }

  private FlowPane settings() {
    DropForm form = model.form();
    FlowPane pane =
        new FlowPane(
            pressure("Gauge read to", SheetTablePane.field(form.step(), "step of the gauge", 4)),
            SheetTablePane.named(
                "Pulses", SheetTablePane.field(form.pulses(), "pulses in a row", 3)),
            SheetTablePane.named(
                "of [ms]", SheetTablePane.field(form.width(), "length of a pulse, ms", 4)),
            SheetTablePane.named(
                "Second reading after [s]",
                SheetTablePane.field(form.pause(), "time between the readings, s", 3)),
            SheetTablePane.named(
                "Third reading after [s]",
                SheetTablePane.field(
                    form.watch(), "time from the second reading to the third, s", 3)),
            SheetTablePane.named(
                "Idle line watched [s]",
                SheetTablePane.field(form.idle(), "watched without firing, s", 3)),
            SheetTablePane.named(
                "Drawn off [mL]",
                SheetTablePane.field(form.drawn(), "fuel drawn off at the tee, mL", 4)),
            pressure("from", SheetTablePane.field(form.drawnFrom(), "drawn off from", 4)),
            pressure("to", SheetTablePane.field(form.drawnTo(), "drawn off to", 4)));
    pane.getStyleClass().add("hc-sheet-bench");
    return pane;
  }

  /** Folded, since most tests are done alike; what is assumed stands in the title. */
  private TitledPane folded(FlowPane settings) {
    TitledPane pane = new TitledPane("", settings);
    pane.setId("drop-settings");
    pane.getStyleClass().add("hc-section");
    pane.setAnimated(false);
    pane.setExpanded(false);
    DropForm form = model.form();
    pane.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    form.pulses().get()
                        + " × "
                        + form.width().get()
                        + " ms, gauge read to "
                        + form.step().get()
                        + " "
                        + model.pressures().unit().symbol()
                        + ", again after "
                        + form.pause().get()
                        + " s",
                form.pulses(),
                form.width(),
                form.step(),
                form.pause(),
                model.pressures().unitProperty()));
    return pane;
  }

  private HBox pressure(String name, TextField field) {
    HBox box = SheetTablePane.named(name, field);
    ((Label) box.getChildren().get(0)).textProperty().bind(withUnit(name));
    return box;
  }

  private StringBinding withUnit(String name) {
    return Bindings.createStringBinding(
        () -> name + " [" + model.pressures().unit().symbol() + "]",
        model.pressures().unitProperty());
  }

  private void fill() {
    boolean hadFocus = SheetTablePane.hasFocus(grid);
    grid.getChildren().clear();
    VBox before = SheetTablePane.head("Before", "");
    VBox after = SheetTablePane.head("After", "");
    VBox later = SheetTablePane.head("Later", "");
    for (VBox head : new VBox[] {before, after, later}) {
      ((Label) head.getChildren().get(1))
          .textProperty()
          .bind(
              Bindings.createStringBinding(
                  () -> model.pressures().unit().symbol(), model.pressures().unitProperty()));
    }
    grid.addRow(
        0, SheetTablePane.head("", ""), SheetTablePane.head("Injector", ""), before, after, later);
    int line = 1;
    for (DropRow row : model.rows()) {
      int at = line;
      String what = "line " + line + ", injector " + row.injector().get();
      TextField first = SheetTablePane.field(row.before(), what + ", gauge before", 4);
      TextField second = SheetTablePane.field(row.after(), what + ", gauge after", 4);
      TextField third = SheetTablePane.field(row.later(), what + ", third reading", 4);
      third.setId("drop-later-" + line);
      third.setOnAction(event -> goOn(at));
      first.setId("drop-before-" + line);
      second.setId("drop-after-" + line);
      first.setOnAction(event -> SheetTablePane.edit(grid, AFTER, at));
      second.setOnAction(event -> goOn(at));
      Label number = new Label(Integer.toString(line));
      number.getStyleClass().add("hc-muted");
      grid.addRow(
          line,
          number,
          SheetTablePane.field(row.injector(), "line " + line + ", injector", 4),
          first,
          second,
          third);
      line++;
    }
    if (hadFocus) {
      focusFirst();
    }
  }

  /** Enter goes on as the needle is read: before, after, then the next line. */
  private void goOn(int line) {
    boolean last = line == model.rows().size();
    SheetTablePane.edit(grid, last ? AFTER : BEFORE, last ? line : line + 1);
  }

  private FlowPane buttons(Runnable open, Runnable paste) {
    Button result = SheetTablePane.button("Result into the job", model::takeResult);
    result.getStyleClass().add("accent");
    FlowPane buttons =
        new FlowPane(
            SheetTablePane.button("Read a drop test …", open),
            SheetTablePane.button("Paste", paste),
            SheetTablePane.button("Another round", model::addRound),
            SheetTablePane.button("Empty test", model::clear),
            result);
    buttons.getStyleClass().add("hc-sheet-bench");
    return buttons;
  }

  /** Puts the keyboard on the first reading. */
  void focusFirst() {
    grid.getChildren().stream()
        .filter(node -> "drop-before-1".equals(node.getId()))
        .findFirst()
        .ifPresent(Node::requestFocus);
  }
}
