package holdcurve.ui.window.holdtests;

import holdcurve.record.job.GaugeSpec;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.plot.Dial;
import java.util.Locale;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The whole screen for one hold: a dial to tap, the watch, and when the next reading is due. */
final class BenchScreen extends HBox {
  private static final Duration TICK = Duration.millis(200);

  /** Size of letters against the height of the screen; digits are about 0.7 of it high [-]. */
  private static final double WATCH = 0.2;

  private static final double VALUE = 0.13;
  private static final double NEXT = 0.06;

  private static final int LEAP = 10;

  private final BenchModel model;
  private final Runnable left;
  private final Runnable beep;
  private final Label watch = big("bench-watch");
  private final Label value = big("bench-value");
  private final Label next = big("bench-next");
  private final Label caution = Texts.caution("");
  private final Button mark = new Button();
  private final Timeline ticking = new Timeline(new KeyFrame(TICK, event -> tick()));
  private Dial dial;
  private boolean wasFull;
  private boolean fitted;

  /**
   * @param beep sounds when a reading is due and the box for it is ticked
   * @param left run when the page is gone back to
   */
  BenchScreen(BenchModel model, Runnable beep, Runnable left) {
    this.model = model;
    this.beep = beep;
    this.left = left;
    setId("bench");
    getStyleClass().add("hc-bench");
    setManaged(false);
    setFocusTraversable(true);
    watch.textProperty().set("0:00");
    mark.setId("bench-mark");
    Button take = button("Enter", "bench-take", this::take);
    Button back = button("Back (Esc)", "bench-back", this::close);
    mark.setFocusTraversable(false);
    mark.setMinWidth(USE_PREF_SIZE);
    mark.setOnAction(event -> mark());
    CheckBox tone = new CheckBox("Beep when due");
    tone.setId("bench-beep");
    tone.setFocusTraversable(false);
    tone.selectedProperty().bindBidirectional(model.beepProperty());
    Label hint = new Label();
    hint.setId("bench-hint");
    hint.setWrapText(true);
    hint.setMinHeight(USE_PREF_SIZE);
    hint.textProperty().bind(model.holds().hold().hintProperty());
    Label keys =
        new Label("Tap the dial, press \u2191 \u2193, or type. Space: watch. Enter: take.");
    keys.setWrapText(true);
    keys.setMinHeight(USE_PREF_SIZE);
    keys.getStyleClass().add("hc-muted");
    caution.setId("bench-caution");
    Region room = new Region();
    VBox.setVgrow(room, Priority.ALWAYS);
    HBox buttons = new HBox(mark, take);
    buttons.getStyleClass().add("hc-line");
    HBox below = new HBox(tone, back);
    below.getStyleClass().add("hc-line");
    VBox side = new VBox(watch, next, value, buttons, hint, caution, room, keys, below);
    side.getStyleClass().add("hc-bench-side");
    HBox.setHgrow(side, Priority.ALWAYS);
    side.setMinWidth(0);
    side.setPrefWidth(0);
    getChildren().add(side);
    ticking.setCycleCount(Animation.INDEFINITE);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    model.needleProperty().addListener((property, before, now) -> update());
    model.typedProperty().addListener((property, before, now) -> update());
    model.holds().watch().runningProperty().addListener((property, before, now) -> update());
    heightProperty().addListener((property, before, now) -> grow(now.doubleValue()));
  }

  private static Label big(String id) {
    Label label = new Label();
    label.setId(id);
    label.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    label.getStyleClass().add("hc-bench-digits");
    return label;
  }

  private static Button button(String text, String id, Runnable what) {
    Button button = new Button(text);
    button.setId(id);
    button.setMinWidth(USE_PREF_SIZE);
    button.setFocusTraversable(false);
    button.setOnAction(event -> what.run());
    return button;
  }

  private void grow(double height) {
    watch.setStyle(size(height * WATCH));
    value.setStyle(size(height * VALUE));
    next.setStyle(size(height * NEXT));
  }

  private static String size(double pixels) {
    return String.format(Locale.ROOT, "-fx-font-size: %.0fpx;", pixels);
  }

  /** Covers a scene, and takes the whole screen where there is one. */
  void open(Scene scene) {
    if (getParent() != null || model.holds().job().getValue() == null) {
      return;
    }
    GaugeSpec gauge = model.holds().job().getValue().gauge();
    String accuracy = String.format(Locale.ROOT, "%.1f", 100 * gauge.accuracyClass());
    dial = new Dial(model.holds().pressures().unit(), gauge.range(), accuracy, 0, 0);
    dial.setId("bench-dial");
    dial.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    dial.prefWidthProperty().bind(Bindings.min(heightProperty(), widthProperty().multiply(0.55)));
    dial.setAccessibleText("Dial: tap where the needle stands");
    dial.setOnMousePressed(event -> model.tap(dial.pressureAt(event.getX(), event.getY())));
    dial.setOnMouseDragged(event -> model.tap(dial.pressureAt(event.getX(), event.getY())));
    dial.pressure().bind(model.needleProperty());
    getChildren().add(0, dial);
    ((Pane) scene.getRoot()).getChildren().add(this);
    fit(scene);
    if (!fitted) {
      fitted = true;
      scene.widthProperty().addListener((property, before, now) -> fit(scene));
      scene.heightProperty().addListener((property, before, now) -> fit(scene));
    }
    if (scene.getWindow() instanceof Stage stage) {
      wasFull = stage.isFullScreen();
      stage.setFullScreenExitHint("");
      stage.setFullScreen(true);
    }
    ticking.play();
    update();
    requestFocus();
  }

  private void fit(Scene scene) {
    if (getParent() != null) {
      resizeRelocate(0, 0, scene.getWidth(), scene.getHeight());
      layout();
    }
  }

  private void close() {
    ticking.stop();
    if (getScene().getWindow() instanceof Stage stage) {
      stage.setFullScreen(wasFull);
    }
    ((Pane) getParent()).getChildren().remove(this);
    getChildren().remove(dial);
    dial.pressure().unbind();
    left.run();
  }

  private void mark() {
    model.mark();
    update();
    requestFocus();
  }

  private void take() {
    model.take();
    update();
    requestFocus();
  }

  private void key(KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    switch (event.getCode()) {
      case SPACE -> mark();
      case ENTER -> take();
      case UP -> model.nudge(1);
      case DOWN -> model.nudge(-1);
      case PAGE_UP -> model.nudge(LEAP);
      case PAGE_DOWN -> model.nudge(-LEAP);
      case BACK_SPACE -> model.back();
      case ESCAPE -> close();
      default -> {
        return;
      }
    }
    event.consume();
  }

  /** Space is the watch wherever the keyboard is; so no button may take it. */
  private void typed(KeyEvent event) {
    if (event.getCharacter().matches("[0-9.,]")) {
      model.type(event.getCharacter());
      event.consume();
    } else if (event.getTarget() instanceof ButtonBase || event.getCharacter().equals(" ")) {
      event.consume();
    }
  }

  private void tick() {
    boolean running = model.holds().watch().runningProperty().get();
    watch.setText(running ? Entry.clock(Math.floor(model.holds().watch().time())) : "0:00");
    next.setText(running ? "Next in " + Entry.clock(Math.ceil(model.left())) : "");
    if (model.isNewlyDue() && model.beepProperty().get()) {
      beep.run();
    }
  }

  private void update() {
    tick();
    mark.setText(
        model.holds().watch().runningProperty().get() ? "Reading (Space)" : "Pump off (Space)");
    caution.setText(
        model.holds().watch().runningProperty().get()
            ? StepCautions.RELIEVE
            : StepCautions.BRIDGED_PUMP);
    String number =
        model.typedProperty().get().isEmpty()
            ? model.holds().pressures().number(model.needleProperty().get())
            : model.typedProperty().get();
    value.setText(number + " " + model.holds().pressures().unit().symbol());
  }
}
