package holdcurve.ui.window.practice;

import holdcurve.common.message.PressureUnit;
import holdcurve.training.Debrief;
import holdcurve.training.RepairScore;
import holdcurve.training.TrainingSession;
import holdcurve.ui.practice.DebriefText;
import holdcurve.ui.practice.RepairWords;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What it was, and what each step was worth. */
final class DebriefPanel extends ScrollPane {
  private static final double WIDTH = 940;

  /**
   * @param unit in which pressures are told
   * @param save asks for a file and adds the score to it, with the mark given
   */
  DebriefPanel(
      TrainingSession session,
      Debrief debrief,
      PracticeModel model,
      PressureUnit unit,
      Consumer<String> save) {
    setId("practice-debrief");
    setFitToWidth(true);
    setFocusTraversable(true);
    DebriefText text = new DebriefText(session.exercise(), debrief);
    VBox page = new VBox();
    page.setMaxWidth(WIDTH);
    page.getStyleClass().add("hc-practice-debrief");
    add(page, debrief.isRight() ? "Found" : "Not this time", text.outcome());
    page.getChildren().add(table(debrief, unit));
    add(page, "What your steps told", text.steps());
    add(
        page,
        "Had it been what you named",
        text.contrast().stream().map(one -> one.in(unit)).toList());
    RepairScore repair = model.repairScore().get();
    add(page, "What you did", repair == null ? List.of() : RepairWords.of(repair));
    add(page, "To remember", text.lesson());
    add(page, "", text.score());
    page.getChildren().add(keep(model, save));
    Button next = new Button("Another car");
    next.setId("practice-again");
    next.setOnAction(event -> model.leave());
    page.getChildren().add(next);
    setContent(page);
  }

  private static FlowPane keep(PracticeModel model, Consumer<String> save) {
    TextField mark = new TextField();
    mark.setId("score-mark");
    mark.setPromptText("a mark of your own; no name is needed");
    mark.setPrefColumnCount(20);
    Button add = new Button("Add the score to a file …");
    add.setId("save-score");
    add.setOnAction(event -> save.accept(mark.getText().strip()));
    Label told = new Label();
    told.textProperty().bind(model.saved());
    FlowPane row = new FlowPane(mark, add, told);
    row.getStyleClass().add("hc-buttons");
    return row;
  }

  private static void add(VBox page, String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    if (!heading.isEmpty()) {
      Label title = new Label(heading);
      title.getStyleClass().addAll("hc-large", "hc-strong");
      page.getChildren().add(title);
    }
    for (String sentence : sentences) {
      page.getChildren().add(Texts.words(sentence));
    }
  }

  private static GridPane table(Debrief debrief, PressureUnit unit) {
    GridPane table = new GridPane();
    table.getStyleClass().add("hc-practice-table");
    ColumnConstraints wide = new ColumnConstraints();
    wide.setHgrow(Priority.ALWAYS);
    wide.setPercentWidth(40);
    table.getColumnConstraints().addAll(wide, narrow(), narrow(), narrow());
    String[] heads = {
      "Step, and what came of it", "You,\nbefore", "Evidence,\nafter", "It told", "Points at"
    };
    for (int column = 0; column < heads.length; column++) {
      Label head = Texts.words(heads[column]);
      head.getStyleClass().add("hc-heading");
      table.add(head, column, 0);
    }
    for (int i = 0; i < debrief.lines().size(); i++) {
      addRow(table, i + 1, debrief.lines().get(i), unit);
    }
    return table;
  }

  /** No word in it is broken. */
  private static ColumnConstraints narrow() {
    ColumnConstraints column = new ColumnConstraints();
    column.setMinWidth(USE_PREF_SIZE);
    return column;
  }

  private static void addRow(GridPane table, int row, Debrief.Line line, PressureUnit unit) {
    table.add(Texts.words(line.step().words() + ": " + line.came().in(unit)), 0, row);
    table.add(percent(line.learner()), 1, row);
    table.add(percent(line.evidence()), 2, row);
    table.add(Texts.words(DebriefText.told(line)), 3, row);
    table.add(Texts.words(line.leading()), 4, row);
  }

  private static Label percent(double share) {
    return new Label(String.format(Locale.ROOT, "%.0f %%", 100 * share));
  }
}
