package holdcurve.ui.window.holdtests;

import holdcurve.record.log.Reading;
import holdcurve.ui.window.frame.Primary;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import javafx.util.Duration;

/** The watch, the one big button, and the line where readings are typed. */
final class StopwatchPane extends VBox {
  private static final Duration TICK = Duration.millis(200);

  private final HoldTestsModel model;
  private final Label time = new Label("0:00");
  private final Button main = new Button();
  private final Button clamps = new Button("Clamps on (F9)");
  private final Button finish = new Button("End");
  private final TextField entry = new TextField();
  private final Timeline ticking = new Timeline(new KeyFrame(TICK, event -> tick()));

  StopwatchPane(HoldTestsModel model) {
    this.model = model;
    getStyleClass().add("hc-watch");
    time.setId("watch");
    time.getStyleClass().add("hc-watch-time");
    time.setMinWidth(USE_PREF_SIZE);
    main.setId("mark");
    main.setMaxWidth(Double.MAX_VALUE);
    Primary.when(Bindings.not(model.rankable()), main);
    main.setWrapText(true);
    main.setTextAlignment(TextAlignment.CENTER);
    main.setMinHeight(USE_PREF_SIZE);
    main.setFocusTraversable(false);
    main.setOnAction(event -> press());
    HBox.setHgrow(main, Priority.ALWAYS);
    clamps.setMaxWidth(Double.MAX_VALUE);
    clamps.setOnAction(event -> model.entry().clampsAreOn());
    finish.setMinWidth(USE_PREF_SIZE);
    finish.setOnAction(event -> model.entry().finish());
    HBox top = new HBox(time, main);
    top.getStyleClass().add("hc-watch-row");
    finish.visibleProperty().bind(model.watch().runningProperty());
    finish.managedProperty().bind(finish.visibleProperty());
    getChildren().addAll(top, clamps, entryLine(), hint());
    ticking.setCycleCount(Animation.INDEFINITE);
    model.watch().runningProperty().addListener((property, before, now) -> run(now));
    model.hold().testProperty().addListener((property, before, now) -> update());
    model.entry().clampsOnProperty().addListener((property, before, now) -> update());
    model.entry().correctingProperty().addListener((property, before, now) -> correct(now));
    model.pressures().unitProperty().addListener((property, before, now) -> update());
    update();
  }

  private HBox entryLine() {
    entry.setId("entry");
    entry.getStyleClass().add("hc-entry");
    entry.setAccessibleText("Reading of the gauge");
    entry.setOnAction(event -> enter());
    entry.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    entry
        .textProperty()
        .addListener(
            (property, before, now) -> {
              if (!now.isBlank()) {
                model.entry().typing();
              }
            });
    entry.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    HBox.setHgrow(entry, Priority.ALWAYS);
    Button take = new Button("Enter");
    take.setMinWidth(USE_PREF_SIZE);
    take.setFocusTraversable(false);
    take.setOnAction(event -> enter());
    HBox line = new HBox(entry, take, finish);
    line.getStyleClass().add("hc-watch-row");
    return line;
  }

  private Label hint() {
    Label hint = new Label();
    hint.setId("hint");
    hint.setWrapText(true);
    hint.setMinHeight(USE_PREF_SIZE);
    hint.getStyleClass().add("hc-small");
    hint.textProperty().bind(model.hold().hintProperty());
    hint.managedProperty().bind(model.hold().hintProperty().isNotEmpty());
    return hint;
  }

  /** A space in the empty line marks the moment; within a line it stands between time and value. */
  private void typed(KeyEvent event) {
    if (event.getCharacter().equals(" ") && entry.getText().isEmpty()) {
      event.consume();
      press();
    }
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE && !entry.getText().isEmpty()) {
      entry.clear();
      model.watch().release();
      model.entry().startCorrecting(null);
      event.consume();
    }
  }

  private void press() {
    model.entry().mark();
    entry.requestFocus();
  }

  private void enter() {
    if (model.entry().enter(entry.getText())) {
      entry.clear();
      entry.requestFocus();
    } else {
      entry.requestFocus();
      entry.selectAll();
    }
  }

  private void correct(Reading reading) {
    if (reading != null) {
      entry.setText(model.entry().typed(reading));
      entry.requestFocus();
      entry.selectAll();
    }
  }

  private void run(boolean running) {
    if (running) {
      ticking.play();
    } else {
      ticking.stop();
    }
    update();
    tick();
  }

  private void tick() {
    boolean running = model.watch().runningProperty().get();
    time.setText(running ? Entry.clock(Math.floor(model.watch().time())) : "0:00");
  }

  private void update() {
    boolean running = model.watch().runningProperty().get();
    boolean begun =
        model.hold().testProperty().get() != null
            && !model.hold().testProperty().get().log().readings().isEmpty();
    main.setText(running ? "Reading (Space)" : begun ? "New hold (Space)" : "Pump off (Space)");
    boolean clamped = running && !model.hold().testProperty().get().clamped().isEmpty();
    clamps.setVisible(clamped && !model.entry().clampsOnProperty().get());
    clamps.setManaged(clamps.isVisible());
    String example = model.pressures().number(1.85e5);
    entry.setPromptText(running ? example + " ⏎" : "1:30 " + example + " ⏎");
  }

  TextField entry() {
    return entry;
  }
}
