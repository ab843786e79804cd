package holdcurve.ui.window.cases;

import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.Correction;
import holdcurve.fault.LeakFault;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What the chosen case counts as, and which car it is about; the user has the last word. */
final class CaseDetails extends VBox {
  /** Stands for what the job itself says. */
  private static final String FILED = "";

  private static final double FAULT_WIDTH = 250;

  private final CasesModel model;
  private final ComboBox<String> counts = new ComboBox<>();
  private final TextField car = new TextField();
  private final Label file = Texts.aside("");
  private final Label filed = Texts.aside("");
  private CaseEntry entry;
  private boolean filling;

  /**
   * @param holds shows the holds of this car
   */
  CaseDetails(CasesModel model, Runnable open, Runnable holds) {
    this.model = model;
    getStyleClass().add("hc-case-details");
    counts.setId("case-fault");
    counts.setPrefWidth(FAULT_WIDTH);
    counts.setAccessibleText("What this case counts as");
    Named.in(counts, "as the job says", this::name);
    counts
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!filling && now != null) {
                model.correct(entry, now);
              }
            });
    car.setId("case-car");
    car.setPrefColumnCount(9);
    car.setOnAction(event -> nameCar());
    car.focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                nameCar();
              }
            });
    Button opening = button("Open the job (Enter)", open);
    opening.setId("open-case");
    Button overlay = button("All holds of this car", holds);
    overlay.setId("car-holds");
    FlowPane line =
        new FlowPane(opening, named("Counts as", counts), named("Car or plate", car), overlay);
    line.getStyleClass().add("hc-case-line");
    getChildren().addAll(file, line, filed);
    show(null, null);
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }

  private static HBox named(String name, javafx.scene.Node field) {
    Label label = new Label(name);
    label.setMinWidth(USE_PREF_SIZE);
    label.setLabelFor(field);
    HBox box = new HBox(label, field);
    box.getStyleClass().add("hc-named");
    return box;
  }

  /**
   * @param chosenOrNull null for none
   */
  void show(CaseEntry chosenOrNull, CaseBook bookOrNull) {
    nameCar();
    filling = true;
    entry = chosenOrNull;
    setDisable(entry == null);
    if (entry == null || bookOrNull == null) {
      file.setText("Choose a case in the list.");
      filed.setText("");
      counts.setValue(null);
      car.clear();
    } else {
      Correction said = bookOrNull.correction(entry);
      file.setText(CasesModel.shown(entry.file()));
      counts.getItems().setAll(choices());
      counts.setValue(said.fault());
      car.setText(said.car());
      filed.setText(words(bookOrNull));
    }
    filling = false;
  }

  private String words(CaseBook book) {
    Optional<String> fault = book.confirmed(entry);
    int others = book.sameCar(entry).size();
    String same =
        others == 0
            ? " No other job of this car."
            : others == 1 ? " 1 other job of this car." : " " + others + " other jobs of this car.";
    return (fault.isPresent()
            ? "Counts as a confirmed fault: " + name(fault.get()) + "."
            : "Not counted: that takes one repair that names a fault, and a hold that proves it.")
        + same;
  }

  private List<String> choices() {
    List<String> choices = new ArrayList<>(List.of(FILED, Correction.NONE));
    model.shownProperty().get().faults().forEach(fault -> choices.add(fault.id()));
    return choices;
  }

  private String name(String fault) {
    return switch (fault) {
      case FILED -> "as the job says";
      case Correction.NONE -> "no confirmed fault";
      default ->
          model.shownProperty().get().faults().stream()
              .filter(one -> one.id().equals(fault))
              .map(LeakFault::name)
              .findFirst()
              .orElse(fault);
    };
  }

  private void nameCar() {
    if (entry == null || filling) {
      return;
    }
    CaseEntry named = entry;
    String before = model.shownProperty().get().book().correction(named).car();
    if (!car.getText().strip().equals(before)) {
      model.nameCar(named, car.getText());
    }
  }
}
