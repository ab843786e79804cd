package holdcurve.ui.window.practice;

import holdcurve.ui.practice.Course;
import holdcurve.ui.practice.PracticeResults.Result;
import holdcurve.ui.window.frame.Texts;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The exercises in the order in which to take them, with what was scored at each. */
final class CoursePanel extends ScrollPane {
  private final PracticeModel model;
  private final GridPane rows = new GridPane();
  private Button next;

  CoursePanel(PracticeModel model) {
    this.model = model;
    setId("practice-course");
    setFitToWidth(true);
    rows.getStyleClass().add("hc-practice-course");
    ColumnConstraints words = new ColumnConstraints();
    words.setHgrow(Priority.ALWAYS);
    rows.getColumnConstraints().addAll(narrow(), words, narrow(), narrow());
    setContent(rows);
    model.lessons().addListener((ListChangeListener<Course.Lesson>) change -> fill());
    model.log().all().addListener((ListChangeListener<Result>) change -> fill());
    fill();
  }

  private static ColumnConstraints narrow() {
    ColumnConstraints column = new ColumnConstraints();
    column.setMinWidth(USE_PREF_SIZE);
    return column;
  }

  private void fill() {
    rows.getChildren().clear();
    next = null;
    if (model.lessons().isEmpty()) {
      rows.add(
          Texts.aside("No exercise came with this program. Open one of your own."), 0, 0, 4, 1);
    }
    int row = 0;
    for (Course.Lesson lesson : model.lessons()) {
      add(lesson, row++);
    }
  }

  private void add(Course.Lesson lesson, int row) {
    OptionalInt best = model.log().best(lesson.title());
    Label level = new Label("Level " + lesson.level());
    Label score = new Label(best.isPresent() ? "Best: " + Math.max(0, best.getAsInt()) : "Open");
    score.setId("course-score-" + lesson.name());
    score.getStyleClass().add(best.isPresent() ? "hc-strong" : "hc-muted");
    Button begin = new Button(best.isPresent() ? "Again" : "Begin");
    begin.setId("course-" + lesson.name());
    begin.setMinWidth(USE_PREF_SIZE);
    begin.setAccessibleText((best.isPresent() ? "Again: " : "Begin: ") + lesson.title());
    begin.setOnAction(event -> model.open(lesson.file()));
    if (best.isEmpty() && next == null) {
      next = begin;
      begin.getStyleClass().add("accent");
    }
    VBox words =
        new VBox(
            Texts.words((row + 1) + ". " + lesson.title(), "hc-strong"),
            Texts.words(lesson.story(), "hc-small"));
    rows.addRow(row, level, words, score, begin);
  }

  /** The first one that isn't done; empty where all are. */
  Optional<Button> next() {
    return Optional.ofNullable(next);
  }
}
