package holdcurve.ui.window.holdtests;

import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.PlotPanel;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Readings typed against a stopwatch, or brought in, with clamps and findings beside them. */
public final class HoldTestsPage implements Page {
  /** Below this width the columns are narrower [sizes of the text]. */
  private static final double NARROW = 66;

  private final Desk desk;
  private final HoldTestsModel model;
  private final StackPane content = new StackPane();
  private final StopwatchPane watch;
  private final ReadingList readings;
  private final TestBar tests;
  private final BenchScreen bench;

  public HoldTestsPage(Desk desk, HoldTestsModel model) {
    this.desk = desk;
    this.model = model;
    watch = new StopwatchPane(model);
    readings =
        new ReadingList(model, button("Paste", this::paste), button("Import …", this::importLog));
    tests = new TestBar(model, this::focus);
    bench = new BenchScreen(model.bench(), Beep::sound, this::focus);
    BorderPane work = new BorderPane();
    work.setTop(
        new VBox(tests, new JudgementBar(model, this::rank), new FollowStrip(model.follow())));
    work.setLeft(left());
    work.setCenter(middle());
    work.setRight(right());
    content.getChildren().addAll(work, new ImportCard(model));
    model
        .intake()
        .previewProperty()
        .addListener(
            (property, before, now) -> {
              if (now == null) {
                focus();
              }
            });
    content.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
    content.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  private VBox left() {
    VBox left = new VBox(watch, readings);
    VBox.setVgrow(readings, Priority.ALWAYS);
    left.getStyleClass().add("hc-side");
    left.prefWidthProperty().bind(side(20.5, 16.5));
    return left;
  }

  private VBox middle() {
    PlotPanel plot = new PlotPanel(model.showBuildUpProperty()).withoutWords();
    new StopMark(model, plot.chart());
    VBox.setVgrow(plot, Priority.ALWAYS);
    model.plotProperty().addListener((property, before, now) -> show(plot, now));
    show(plot, model.plotProperty().get());
    FlowPane ways = new FlowPane();
    ways.getStyleClass().addAll("hc-buttons", "hc-compact", "hc-ways");
    for (Button way :
        List.of(button("Big dial (F11)", this::big), button("Follow a log …", this::follow))) {
      way.setFocusTraversable(false);
      ways.getChildren().add(way);
    }
    VBox middle = new VBox(ways, plot);
    middle.setMinWidth(0);
    return middle;
  }

  private static void show(PlotPanel panel, HoldPlot plot) {
    panel.setVisible(plot != null);
    if (plot != null) {
      panel.show(plot, "sound circuit");
    }
  }

  private ScrollPane right() {
    VBox right =
        new VBox(
            new StepsBox(model), new AboutBox(model), new FindingsBox(model), new GaugeBox(model));
    right.getStyleClass().add("hc-side");
    ScrollPane scroll = Scrolled.downAround(right);
    scroll.getStyleClass().add("hc-side-scroll");
    scroll.prefWidthProperty().bind(side(20, 17));
    return scroll;
  }

  /**
   * Width of a column beside the plot, in sizes of the text; where the window is narrow for the
   * text, the plot is left more of it.
   */
  private DoubleBinding side(double usual, double narrow) {
    ReadOnlyIntegerProperty letter = desk.looks().textSizeProperty();
    return Bindings.createDoubleBinding(
        () -> letter.get() * (content.getWidth() < NARROW * letter.get() ? narrow : usual),
        letter,
        content.widthProperty());
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setOnAction(event -> what.run());
    return button;
  }

  private void rank() {
    model.rank();
    desk.page().set("Suspects");
  }

  private void paste() {
    Clipboard clipboard = Clipboard.getSystemClipboard();
    if (clipboard.hasString()) {
      model.intake().paste(clipboard.getString());
    }
  }

  private void importLog() {
    desk.dialogs().chooseLog(desk.jobs().fileProperty().get()).ifPresent(model.intake()::open);
  }

  private void follow() {
    desk.dialogs().chooseLog(desk.jobs().fileProperty().get()).ifPresent(model.follow()::follow);
  }

  private void big() {
    bench.open(content.getScene());
  }

  /** What is typed outside of any field belongs to the readings. */
  private void typed(KeyEvent event) {
    boolean inField = event.getTarget() instanceof TextInputControl;
    String typed = event.getCharacter();
    if (inField || event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    if (typed.equals(" ")) {
      if (!takesSpace(event.getTarget())) {
        model.entry().mark();
        focus();
      }
    } else if (typed.matches("[0-9]")) {
      focus();
      watch.entry().appendText(typed);
      watch.entry().end();
    }
  }

  /** Buttons, boxes to tick and lists to open have a use of their own for it. */
  private static boolean takesSpace(EventTarget target) {
    return target instanceof ButtonBase || target instanceof ComboBoxBase;
  }

  /**
   * Ranking from here ends the hold and turns to the suspects, by key as by button. A table in the
   * clipboard is pasted as readings, also from within a field.
   */
  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.F5) {
      event.consume();
      rank();
      return;
    }
    Clipboard clipboard = Clipboard.getSystemClipboard();
    if (event.isShortcutDown()
        && event.getCode() == KeyCode.V
        && clipboard.hasString()
        && clipboard.getString().strip().contains("\n")) {
      event.consume();
      paste();
    }
  }

  @Override
  public String title() {
    return "Hold tests";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<KeyUse> keys() {
    return List.of(
        new KeyUse("Space", "Pump stops now; then: a reading now"),
        new KeyUse("0 to 9, Enter", "Type a reading and take it"),
        new KeyUse("D, Delete", "In the list: doubtful, remove"));
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        action("Pump stops now, or take a reading", KeyCode.F8, model.entry()::mark),
        action("Clamps are on", KeyCode.F9, model.entry()::clampsAreOn),
        action("End of the hold", KeyCode.F10, model.entry()::finish),
        Actions.of("New hold", Actions.onShortcut(KeyCode.T), () -> model.hold().addTest("hold")),
        Actions.of("Next hold", Actions.onShortcut(KeyCode.PAGE_DOWN), () -> tests.go(1)),
        Actions.of("Previous hold", Actions.onShortcut(KeyCode.PAGE_UP), () -> tests.go(-1)),
        Actions.of("Import a log …", Actions.onShortcut(KeyCode.I), this::importLog),
        Actions.of("Follow a growing log …", Actions.onShortcut(KeyCode.G), this::follow),
        action("Big dial and watch", KeyCode.F11, this::big),
        Actions.of(
            "Reading is doubtful, or not",
            Actions.onShortcut(KeyCode.B),
            () -> readings.withChosen(model.edits()::toggleDoubt)),
        Actions.of(
            "Pump stop a second earlier",
            new KeyCodeCombination(KeyCode.LEFT, KeyCombination.ALT_DOWN),
            () -> model.edits().movePumpStop(-1)),
        Actions.of(
            "Pump stop a second later",
            new KeyCodeCombination(KeyCode.RIGHT, KeyCombination.ALT_DOWN),
            () -> model.edits().movePumpStop(1)),
        Actions.of("Rank and see the suspects", Actions.onShortcut(KeyCode.ENTER), this::rank));
  }

  private static MenuItem action(String text, KeyCode key, Runnable what) {
    return Actions.of(text, new KeyCodeCombination(key), what);
  }

  @Override
  public void focus() {
    watch.entry().requestFocus();
  }
}
