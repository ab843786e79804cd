package holdcurve.ui.window.practice;

import holdcurve.common.message.PressureUnit;
import holdcurve.record.log.Reading;
import holdcurve.training.Step;
import holdcurve.training.TrainingSession;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.Scale;
import holdcurve.ui.window.plot.TimeAxis;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A hold under way: the curve grows with the needle, and the learner types what the dial shows. */
final class WatchPanel extends VBox {
  /** Room above where the needle begins [-]. */
  private static final double ABOVE = 1.15;

  private static final double CHART = 240;

  private final PracticeModel model;
  private final PressureFormat pressures;
  private final Label step = Texts.words("", "hc-strong");
  private final HoldChart chart = new HoldChart();
  private final TextField reading = new TextField();
  private final Label prompt = new Label();
  private final Label noted = Texts.words("", "hc-small");

  WatchPanel(PracticeModel model, PressureFormat pressures) {
    this.model = model;
    this.pressures = pressures;
    setId("practice-watch");
    getStyleClass().add("hc-practice-watch");
    chart.setMinHeight(CHART);
    chart.setPrefHeight(CHART);
    VBox.setVgrow(chart, Priority.ALWAYS);
    noted.setId("practice-noted");
    Label told = Texts.words("", "hc-caution", "hc-small");
    told.setId("practice-told");
    told.textProperty().bind(model.told());
    told.managedProperty().bind(told.textProperty().isNotEmpty());
    told.visibleProperty().bind(told.managedProperty());
    getChildren().addAll(step, chart, typing(), told, noted, ends());
    model.watch().addListener((property, before, now) -> begin(now));
    model.elapsed().addListener((property, before, now) -> draw());
    model.noted().addListener((ListChangeListener<Reading>) change -> draw());
    pressures.unitProperty().addListener((property, before, now) -> draw());
  }

  private HBox typing() {
    reading.setId("practice-reading");
    reading.setPrefColumnCount(6);
    reading.setAccessibleText("What the needle shows");
    prompt.setLabelFor(reading);
    prompt.setMinWidth(USE_PREF_SIZE);
    reading.textProperty().addListener((property, before, now) -> model.typing(!now.isBlank()));
    reading.setOnAction(event -> note());
    Button note = new Button("Note");
    note.setId("practice-note");
    note.setOnAction(event -> note());
    note.disableProperty().bind(reading.textProperty().isEmpty());
    Button back = new Button("Take back");
    back.setId("practice-take-back");
    back.setOnAction(event -> model.takeBack());
    back.disableProperty().bind(Bindings.isEmpty(model.noted()));
    HBox row = new HBox(prompt, reading, note, back);
    List.of(note, back).forEach(button -> button.setMinWidth(USE_PREF_SIZE));
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("hc-practice-row");
    return row;
  }

  private FlowPane ends() {
    Button done = new Button("Done");
    done.setId("practice-done");
    done.setOnAction(event -> model.doneReading());
    done.disableProperty()
        .bind(Bindings.size(model.noted()).lessThan(TrainingSession.FEWEST_READINGS));
    Button other = new Button("Let a practised eye read it");
    other.setId("practice-read-for-me");
    other.setOnAction(event -> model.readForMe());
    FlowPane row = new FlowPane(done, other, Texts.aside("What you note is what is judged."));
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("hc-buttons");
    return row;
  }

  private void note() {
    if (model.note(reading.getText())) {
      reading.clear();
    }
    reading.requestFocus();
  }

  private void begin(PracticeModel.Watch watch) {
    reading.clear();
    if (watch != null) {
      step.setText(watch.taken().step().words());
      draw();
    }
  }

  void focusFirst() {
    reading.requestFocus();
  }

  private void draw() {
    PracticeModel.Watch watch = model.watch().get();
    if (watch == null) {
      return;
    }
    prompt.setText("The needle shows [" + pressures.unit().symbol() + "]");
    noted.setText(
        model.noted().isEmpty()
            ? "Nothing noted yet. Time waits while you type, but at 1×."
            : model.noted().stream()
                .map(one -> clock(one.time()) + "  " + pressures.number(one.pressure()))
                .collect(Collectors.joining("   ")));
    chart.show(plot(watch));
  }

  private static String clock(double seconds) {
    int whole = (int) Math.round(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  private HoldPlot plot(PracticeModel.Watch watch) {
    PressureUnit unit = pressures.unit();
    TimeAxis axis = TimeAxis.of(watch.duration());
    boolean clamped = !((Step.Hold) watch.taken().step()).clamped().isEmpty();
    double clampTime = watch.taken().hold().orElseThrow().clampTime();
    return new HoldPlot(
        watch.taken().step().words(),
        "",
        clamped,
        axis,
        Scale.around(0, axis.in(watch.duration()), 0.015, 0),
        unit,
        Scale.around(0, unit.fromPascal(ABOVE * watch.needle()[0]), 0, unit.fromPascal(1e4)),
        model.noted().stream()
            .map(
                one ->
                    new HoldPlot.Mark(axis.in(one.time()), unit.fromPascal(one.pressure()), false))
            .toList(),
        "",
        Optional.of(curve(watch, axis, unit)),
        clamped && model.elapsed().get() >= clampTime
            ? OptionalDouble.of(axis.in(clampTime))
            : OptionalDouble.empty(),
        0);
  }

  /** As far as the hold has gone; its end is where the needle stands. */
  private HoldPlot.Curve curve(PracticeModel.Watch watch, TimeAxis axis, PressureUnit unit) {
    double now = model.elapsed().get();
    double[] past = Arrays.stream(watch.times()).filter(time -> time < now).toArray();
    double[] times = Arrays.copyOf(past, past.length + 1);
    times[past.length] = now;
    double[] needle = Arrays.stream(times).map(watch::at).map(unit::fromPascal).toArray();
    double[] shown = Arrays.stream(times).map(axis::in).toArray();
    return new HoldPlot.Curve(shown, needle, needle, needle);
  }
}
