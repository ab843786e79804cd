package holdcurve.ui.window.practice;

import holdcurve.physics.part.Regulator;
import holdcurve.record.job.GaugeSpec;
import holdcurve.training.TrainingSession;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.plot.Dial;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The gauge at the tee, with the clock of the hold and its speeds under it. */
final class GaugePanel extends VBox {
  /** Where a healthy circuit stands, as shares of the set pressure: common practice [-]. */
  private static final double LOW = 0.8;

  private static final double HIGH = 1.05;

  /** A smaller dial can't be read to its divisions [px]. */
  private static final double LEGIBLE = 262;

  private final PracticeModel model;
  private final PressureFormat pressures;
  private final StackPane holder = new StackPane();
  private final Label clock = new Label();
  private final Button skip = new Button("End");
  private final HBox controls = new HBox();
  private Dial dial;

  private final AnimationTimer run =
      new AnimationTimer() {
        private long before;

        @Override
        public void start() {
          before = 0;
          super.start();
        }

        @Override
        public void handle(long now) {
          model.advance(before == 0 ? 0 : (now - before) / 1e9);
          before = now;
        }
      };

  GaugePanel(PracticeModel model, PressureFormat pressures) {
    this.pressures = pressures;
    this.model = model;
    getStyleClass().add("hc-practice-gauge");
    setAlignment(Pos.TOP_CENTER);
    clock.setId("practice-clock");
    clock.getStyleClass().add("hc-large");
    skip.setId("practice-skip");
    skip.setMinWidth(USE_PREF_SIZE);
    skip.setAccessibleText("To the end of the hold");
    skip.setOnAction(event -> model.skip());
    controls.setAlignment(Pos.CENTER);
    controls.getStyleClass().add("hc-practice-row");
    ToggleGroup group = new ToggleGroup();
    for (int times : PracticeModel.SPEEDS) {
      controls.getChildren().add(lapse(times, group));
    }
    controls.getChildren().add(skip);
    Label caution =
        new Label(String.join(" ", StepCautions.TEST, StepCautions.CLAMPS, StepCautions.LIFTING));
    caution.setWrapText(true);
    caution.setMinHeight(USE_PREF_SIZE);
    caution.getStyleClass().addAll("hc-caution", "hc-small");
    ScrollPane cautions = new ScrollPane(caution);
    cautions.setFitToWidth(true);
    cautions.setMinHeight(0);
    cautions.setPrefHeight(0);
    VBox.setVgrow(cautions, Priority.ALWAYS);
    holder.setMinHeight(LEGIBLE);
    getChildren().addAll(holder, clock, controls, cautions);
    model.session().addListener((property, before, now) -> begin(now));
    pressures.unitProperty().addListener((property, before, now) -> begin(model.session().get()));
    model.watch().addListener((property, before, now) -> watch(now));
    model.elapsed().addListener((property, before, now) -> show());
    begin(model.session().get());
    watch(model.watch().get());
  }

  private ToggleButton lapse(int times, ToggleGroup group) {
    ToggleButton button = new ToggleButton(times + "×");
    button.setMinWidth(USE_PREF_SIZE);
    button.setAccessibleText(times == 1 ? "real time" : times + " times faster");
    button.setId("lapse-" + times);
    button.setToggleGroup(group);
    button.setSelected(times == model.speed().get());
    button.setOnAction(
        event -> {
          model.speed().set(times);
          button.setSelected(true);
        });
    return button;
  }

  private void begin(TrainingSession session) {
    holder.getChildren().clear();
    if (session == null) {
      return;
    }
    GaugeSpec gauge = session.exercise().gauge();
    double set = session.exercise().circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    String accuracy = String.format(Locale.ROOT, "%.1f", 100 * gauge.accuracyClass());
    double stood = dial == null ? 0 : dial.shown().get();
    dial = new Dial(pressures.unit(), gauge.range(), accuracy, LOW * set, HIGH * set);
    dial.pressure().set(stood);
    dial.shown().set(stood);
    holder.getChildren().add(dial);
  }

  private void watch(PracticeModel.Watch watch) {
    skip.setDisable(watch == null);
    if (watch == null) {
      run.stop();
      clock.setText("Pump stopped");
    } else {
      run.start();
      show();
    }
  }

  /** The needle stands where the curve ends: no swing of its own comes between. */
  private void show() {
    PracticeModel.Watch watch = model.watch().get();
    if (watch == null) {
      return;
    }
    int seconds = (int) model.elapsed().get();
    dial.pressure().set(model.needle());
    dial.shown().set(model.needle());
    clock.setText(
        String.format(
            Locale.ROOT, "%d:%02d of %.0f min", seconds / 60, seconds % 60, watch.duration() / 60));
  }
}
