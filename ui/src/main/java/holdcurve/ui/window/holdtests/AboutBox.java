package holdcurve.ui.window.holdtests;

import holdcurve.common.message.PartName;
import holdcurve.common.number.Celsius;
import holdcurve.record.job.HoldTest;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Clamps, fuel temperature, date and notes of a hold. */
final class AboutBox extends VBox {
  private final HoldTestsModel model;
  private final FlowPane clamps = new FlowPane();
  private final TextField temperature = new TextField();
  private final TextField date = new TextField();
  private final TextArea notes = new TextArea();
  private List<String> hoses = List.of();

  AboutBox(HoldTestsModel model) {
    this.model = model;
    getStyleClass().add("hc-about");
    clamps.setId("clamps");
    clamps.getStyleClass().add("hc-clamps");
    temperature.setPromptText("°C");
    temperature.setPrefColumnCount(4);
    temperature.setAccessibleText("Fuel temperature in °C");
    date.setPromptText("2026-04-11");
    date.setPrefColumnCount(9);
    notes.setPromptText("Notes");
    notes.setAccessibleText("Notes on the hold");
    notes.setPrefRowCount(1);
    notes.setWrapText(true);
    notes.addEventFilter(KeyEvent.KEY_PRESSED, AboutBox::tabLeaves);
    Fields.committing(temperature, model.details()::temperature);
    Fields.committing(date, model.details()::date);
    Fields.committing(notes, model.details()::notes);
    FlowPane line =
        new FlowPane(Fields.labelled("Fuel", temperature), Fields.labelled("Date", date));
    line.getStyleClass().add("hc-buttons");
    getChildren().addAll(Texts.words("Clamps", "hc-heading"), clamps, line, notes);
    model.hold().testProperty().addListener((property, before, now) -> show(now));
    show(model.hold().testProperty().get());
    model.hold().jobs().jobProperty().addListener((property, before, now) -> circuitChanged());
  }

  private void circuitChanged() {
    if (!hoses.equals(model.details().hoses())) {
      showClamps(model.hold().testProperty().get());
    }
  }

  /** The tab key moves on instead of making a gap in the notes. */
  private static void tabLeaves(KeyEvent event) {
    if (event.getCode() == KeyCode.TAB && !event.isShortcutDown()) {
      TextArea area = (TextArea) event.getSource();
      KeyEvent leave =
          new KeyEvent(
              event.getEventType(),
              event.getCharacter(),
              event.getText(),
              event.getCode(),
              event.isShiftDown(),
              true,
              event.isAltDown(),
              event.isMetaDown());
      area.fireEvent(leave);
      event.consume();
    }
  }

  private void show(HoldTest test) {
    setDisable(test == null);
    showClamps(test);
    if (test == null) {
      return;
    }
    temperature.setText(
        test.fuelTemperature().isPresent() ? celsius(test.fuelTemperature().getAsDouble()) : "");
    date.setText(test.date());
    notes.setText(test.notes());
  }

  private static String celsius(double kelvins) {
    return String.format(Locale.ROOT, "%.1f", Celsius.of(kelvins)).replaceFirst("\\.0$", "");
  }

  private void showClamps(HoldTest test) {
    clamps.getChildren().clear();
    hoses = test == null ? List.of() : model.details().hoses();
    hoses.forEach(hose -> clamps.getChildren().add(clamp(hose, test)));
    if (test != null && hoses.isEmpty()) {
      clamps.getChildren().add(Texts.words("No hose of this circuit can be clamped.", "hc-muted"));
    }
  }

  private CheckBox clamp(String hose, HoldTest test) {
    CheckBox box = new CheckBox(PartName.of(hose));
    box.setId("clamp-" + hose);
    box.setSelected(test.clamped().contains(hose));
    box.setOnAction(event -> model.details().clamp(hose, box.isSelected()));
    return box;
  }
}
