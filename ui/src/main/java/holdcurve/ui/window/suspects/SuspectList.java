package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.SuspectGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * The suspects one below the other; those that can't be told apart share a rule and a reason. Not a
 * {@code ListView}: that guesses the heights of lines whose words wrap, and cuts them.
 */
final class SuspectList extends ScrollPane {
  private static final int PAGE = 5;

  private final SuspectsModel model;
  private final VBox column = new VBox();
  private final List<SuspectLine> lines = new ArrayList<>();

  SuspectList(SuspectsModel model) {
    this.model = model;
    setId("suspects");
    setContent(column);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setFocusTraversable(false);
    column.getStyleClass().add("hc-suspects");
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    model.rows().addListener((ListChangeListener<SuspectRow>) change -> fill());
    model.unit().addListener((property, before, now) -> fill());
    model.chosenProperty().addListener((property, before, now) -> choose());
    fill();
  }

  private void fill() {
    boolean hadFocus = lines.stream().anyMatch(Node::isFocused);
    lines.clear();
    column.getChildren().clear();
    VBox group = null;
    for (SuspectRow row : model.rows()) {
      if (row.groupStarting().isPresent()) {
        group = groupBox(row.groupStarting().get());
        column.getChildren().add(group);
      }
      (row.inGroup() ? group : column).getChildren().add(line(row));
    }
    choose();
    setVvalue(0);
    if (hadFocus) {
      focusChosen();
    }
  }

  private SuspectLine line(SuspectRow row) {
    SuspectLine line = new SuspectLine(row, model.unit().getValue());
    line.setOnMousePressed(
        event -> {
          model.chosenProperty().set(row);
          line.requestFocus();
        });
    lines.add(line);
    return line;
  }

  private static VBox groupBox(SuspectGroup group) {
    VBox head =
        new VBox(
            SuspectLine.words(
                "Not separated by these tests, together " + Figures.percent(group.probability()),
                "hc-strong"),
            SuspectLine.words(group.reason(), "hc-small"));
    head.getStyleClass().add("hc-group-head");
    VBox box = new VBox(head);
    box.getStyleClass().add("hc-group");
    return box;
  }

  private void choose() {
    SuspectRow chosen = model.chosenProperty().get();
    lines.forEach(line -> line.choose(line.row().equals(chosen)));
  }

  private Optional<SuspectLine> chosenLine() {
    return lines.stream()
        .filter(line -> line.row().equals(model.chosenProperty().get()))
        .findFirst();
  }

  private void key(KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    int now = chosenLine().map(lines::indexOf).orElse(0);
    switch (event.getCode()) {
      case DOWN -> go(now + 1, event);
      case UP -> go(now - 1, event);
      case PAGE_DOWN -> go(now + PAGE, event);
      case PAGE_UP -> go(now - PAGE, event);
      case HOME -> go(0, event);
      case END -> go(lines.size() - 1, event);
      default -> {}
    }
  }

  private void go(int wanted, KeyEvent event) {
    event.consume();
    if (!lines.isEmpty()) {
      int index = Math.max(0, Math.min(lines.size() - 1, wanted));
      model.chosenProperty().set(lines.get(index).row());
      focusChosen();
    }
  }

  /** Puts the keyboard on the chosen line and the line in view. */
  void focusChosen() {
    chosenLine()
        .ifPresent(
            line -> {
              line.requestFocus();
              reveal(line);
            });
  }

  private void reveal(SuspectLine line) {
    layout();
    double top = column.sceneToLocal(line.localToScene(0, 0)).getY();
    double bottom = top + line.getHeight();
    double room = getViewportBounds().getHeight();
    double hidden = column.getHeight() - room;
    double shown = getVvalue() * hidden;
    if (hidden <= 0) {
      return;
    }
    if (lines.indexOf(line) == 0) {
      setVvalue(0);
    } else if (top < shown) {
      setVvalue(top / hidden);
    } else if (bottom > shown + room) {
      setVvalue((bottom - room) / hidden);
    }
  }
}
