package holdcurve.ui.window.holdtests;

import holdcurve.ui.window.frame.Texts;
import java.util.function.Predicate;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The gauge of the job: its scale, its class, and how fine it is read. */
final class GaugeBox extends VBox {
  private final HoldTestsModel model;
  private final TextField range = field("gauge-range", "End of the gauge's scale");
  private final TextField accuracyClass = field("gauge-class", "Class of the gauge in percent");
  private final TextField step = field("gauge-step", "Step to which the gauge is read");
  private final Label rangeUnit = new Label();
  private final Label stepUnit = new Label();

  GaugeBox(HoldTestsModel model) {
    this.model = model;
    setId("gauge");
    getStyleClass().add("hc-about");
    committing(range, model.gauge()::setRange);
    committing(accuracyClass, model.gauge()::setAccuracyClass);
    committing(step, model.gauge()::setStep);
    FlowPane line =
        new FlowPane(
            Fields.labelled("Scale to", range, rangeUnit),
            Fields.labelled("class", accuracyClass),
            Fields.labelled("read to", step, stepUnit));
    line.getStyleClass().add("hc-buttons");
    getChildren().addAll(Texts.heading("Gauge"), line);
    model.hold().jobs().jobProperty().addListener((property, before, now) -> show());
    model.pressures().unitProperty().addListener((property, before, now) -> show());
    show();
  }

  private static TextField field(String id, String what) {
    TextField field = new TextField();
    field.setId(id);
    field.setAccessibleText(what);
    field.setPrefColumnCount(3);
    return field;
  }

  /** What can't be is not kept in the field. */
  private void committing(TextField field, Predicate<String> set) {
    Fields.committing(
        field,
        typed -> {
          if (!set.test(typed)) {
            show();
          }
        });
  }

  private void show() {
    range.setText(model.gauge().range());
    accuracyClass.setText(model.gauge().accuracyClass());
    step.setText(model.gauge().step());
    rangeUnit.setText(model.pressures().unit().symbol());
    stepUnit.setText(model.pressures().unit().symbol());
  }
}
