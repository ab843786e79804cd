package holdcurve.ui.window.suspects;

import holdcurve.inference.answer.Suspect;
import holdcurve.ui.window.frame.StepCautions;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** The chosen suspect in words: where it is, what is seen, what puts it right. */
final class SuspectDetails extends GridPane {
  private final Label name = words("hc-heading");
  private final Label symptoms = words();
  private final Label repair = words();
  private final Label caution = words("hc-caution", "hc-small");

  SuspectDetails(SuspectsModel model) {
    getStyleClass().add("hc-details");
    for (int column = 0; column < 2; column++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      getColumnConstraints().add(half);
    }
    caution.setText(StepCautions.REPAIR);
    add(name, 0, 0, 2, 1);
    add(title("What is seen"), 0, 1);
    add(title("What puts it right"), 1, 1);
    add(symptoms, 0, 2);
    add(repair, 1, 2);
    add(caution, 0, 3, 2, 1);
    model.chosenProperty().addListener((property, before, now) -> show(now));
    show(model.chosenProperty().get());
  }

  private void show(SuspectRow row) {
    for (Node node : getChildren()) {
      node.setVisible(row != null || node == name);
    }
    if (row == null) {
      name.setText("Each suspect is described here once they are ranked (F5).");
    } else {
      show(row.suspect());
    }
  }

  private void show(Suspect suspect) {
    name.setText(
        suspect.where().isEmpty() ? suspect.name() : suspect.name() + " – " + suspect.where());
    symptoms.setText(suspect.symptoms());
    repair.setText(suspect.repair());
    caution.setVisible(!suspect.isNone());
    caution.setManaged(!suspect.isNone());
  }

  private static Label title(String text) {
    Label label = words("hc-muted");
    label.setText(text);
    return label;
  }

  private static Label words(String... styles) {
    Label label = new Label();
    label.setWrapText(true);
    setValignment(label, VPos.TOP);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
