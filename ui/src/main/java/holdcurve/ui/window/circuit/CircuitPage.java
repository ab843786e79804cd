package holdcurve.ui.window.circuit;

import holdcurve.inference.answer.Suspect;
import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.OutOfDate;
import holdcurve.ui.window.frame.Page;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The circuit drawn; a part is edited below it. */
public final class CircuitPage implements Page {
  private static final double EDITOR_SHARE = 0.31;

  private final CircuitModel model;
  private final BorderPane content = new BorderPane();
  private final DrawingPane drawing;
  private final PartEditor editor;
  private final Label lit = new Label();

  /**
   * @param startHold turns to where readings are taken, with a hold to take them in
   */
  public CircuitPage(CircuitModel model, Runnable startHold) {
    this.model = model;
    drawing = new DrawingPane(model);
    editor = new PartEditor(model);
    editor.prefHeightProperty().bind(content.heightProperty().multiply(EDITOR_SHARE));
    lit.getStyleClass().add("hc-lit-words");
    lit.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(lit, Priority.ALWAYS);
    Button start = new Button("Start hold");
    start.setId("start-hold");
    start.getStyleClass().add("accent");
    start.setMinWidth(Region.USE_PREF_SIZE);
    start.setOnAction(event -> startHold.run());
    HBox top = new HBox(lit, start);
    top.getStyleClass().add("hc-page-top");
    content.setTop(
        new VBox(OutOfDate.of(model.litOutdated(), "Rank again (F5)", model::rank, lit), top));
    content.setCenter(drawing);
    content.setBottom(editor);
    drawing.addEventHandler(KeyEvent.KEY_PRESSED, this::enter);
    drawing.addEventFilter(KeyEvent.KEY_PRESSED, editor.tools()::key);
    drawing.offer(editor.tools().menu());
    model.litProperty().addListener((property, before, now) -> say());
    say();
  }

  private void say() {
    Suspect suspect = model.suspectProperty().get();
    lit.setVisible(suspect != null && !model.litProperty().get().isEmpty());
    if (lit.isVisible()) {
      lit.setText("Marked with a drop: where to look if it is this: " + suspect.name());
    }
  }

  private void enter(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.F2) {
      editor.edit();
      event.consume();
    }
  }

  @Override
  public String title() {
    return "Circuit";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<KeyUse> keys() {
    return List.of(
        new KeyUse("\u2190 \u2192", "From part to part"),
        new KeyUse("Enter", "Change the values of the part"),
        new KeyUse("Insert", "Add a part after it"),
        new KeyUse("Delete", "Remove the part"),
        new KeyUse("Alt+\u2190 Alt+\u2192", "Move the part along the line"));
  }

  @Override
  public List<MenuItem> actions() {
    MenuItem next = Actions.of("Next part", Actions.onShortcut(KeyCode.PAGE_DOWN), () -> go(1));
    MenuItem previous =
        Actions.of("Previous part", Actions.onShortcut(KeyCode.PAGE_UP), () -> go(-1));
    return List.of(
        next,
        previous,
        Actions.of("Add a part after it (Insert)", null, () -> tools("#add-part")),
        Actions.of("Move it with the flow (Alt+→)", null, () -> model.move(1)),
        Actions.of("Move it against the flow (Alt+←)", null, () -> model.move(-1)),
        Actions.of("Remove it (Delete)", null, model::remove),
        Actions.of("Rename it", null, editor.tools()::rename),
        Actions.of("Change its values", Actions.onShortcut(KeyCode.E), editor::edit));
  }

  private void tools(String control) {
    editor.lookup(control).requestFocus();
  }

  private void go(int step) {
    model.go(step);
    drawing.focus();
  }

  @Override
  public void focus() {
    drawing.focus();
  }
}
