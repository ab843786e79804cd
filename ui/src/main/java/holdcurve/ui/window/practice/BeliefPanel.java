package holdcurve.ui.window.practice;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the learner thinks: a slider for each answer. */
final class BeliefPanel extends VBox {
  private final PracticeModel model;
  private final VBox rows = new VBox();
  private final Button answer = new Button("Submit answer");

  BeliefPanel(PracticeModel model) {
    this.model = model;
    getStyleClass().add("hc-practice-belief");
    rows.getStyleClass().add("hc-practice-rows");
    ScrollPane scroll = new ScrollPane(rows);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    Label heading = new Label("What do you expect?");
    heading.getStyleClass().add("hc-heading");
    Label how = new Label("Set your odds. What you leave at 0 shares the rest evenly.");
    how.setWrapText(true);
    how.setMinHeight(USE_PREF_SIZE);
    how.getStyleClass().addAll("hc-muted", "hc-small");
    answer.setId("practice-answer");
    answer.setMaxWidth(Double.MAX_VALUE);
    answer.setOnAction(event -> model.answer());
    answer
        .disableProperty()
        .bind(
            model
                .busy()
                .or(model.watch().isNotNull())
                .or(model.repairs().isNotNull())
                .or(Bindings.greaterThan(model.stated(), 100)));
    getChildren().addAll(heading, how, scroll, sum(), answer);
    model
        .answers()
        .addListener((ListChangeListener<PracticeModel.Sureness>) change -> changed(change));
    fill();
  }

  private void changed(ListChangeListener.Change<? extends PracticeModel.Sureness> change) {
    while (change.next()) {
      if (change.wasAdded() || change.wasRemoved()) {
        fill();
        return;
      }
    }
  }

  private Label sum() {
    Label sum = new Label();
    sum.setId("practice-sum");
    sum.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    model.stated().get() > 100
                        ? model.stated().get() + " % in all: take some back"
                        : model.stated().get() + " % given",
                model.stated()));
    return sum;
  }

  private void fill() {
    rows.getChildren().clear();
    model.answers().forEach(one -> rows.getChildren().add(row(one)));
  }

  private static GridPane row(PracticeModel.Sureness one) {
    Label words = new Label(one.answer().words());
    words.setWrapText(true);
    Slider slider = new Slider(0, 100, one.percent().get());
    slider.setId("sure-" + one.answer().id());
    slider.setBlockIncrement(5);
    slider.setAccessibleText("How sure: " + one.answer().words());
    slider.valueProperty().addListener((p, b, now) -> one.percent().set(rounded(now)));
    Label percent = new Label();
    percent
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> String.format(Locale.ROOT, "%d %%", one.percent().get()), one.percent()));
    GridPane row = new GridPane();
    ColumnConstraints wide = new ColumnConstraints();
    wide.setHgrow(Priority.ALWAYS);
    ColumnConstraints narrow = new ColumnConstraints(56);
    row.getColumnConstraints().addAll(wide, narrow);
    row.add(words, 0, 0, 2, 1);
    row.add(slider, 0, 1);
    row.add(percent, 1, 1);
    return row;
  }

  private static int rounded(Number value) {
    return (int) Math.round(value.doubleValue());
  }
}
