package holdcurve.ui.window.practice;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.training.Debrief;
import holdcurve.ui.practice.Course;
import holdcurve.ui.practice.DebriefText;
import holdcurve.ui.practice.RepairWords;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.SeveralHolds;
import holdcurve.ui.window.plot.SeveralHoldsPanel;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The score and what it was; then each step with its curves. */
final class DebriefPanel extends ScrollPane {
  private static final double WIDTH = 1180;
  private static final double CHART_WIDTH = 560;
  private static final double CHART_HEIGHT = 250;

  private final DebriefText text;
  private final PressureUnit unit;

  /**
   * @param unit in which pressures are told
   * @param save asks for a file and adds the score to it
   */
  DebriefPanel(Debrief debrief, PracticeModel model, PressureUnit unit, Runnable save) {
    this.unit = unit;
    this.text = new DebriefText(debrief);
    setId("practice-debrief");
    setFitToWidth(true);
    setFocusTraversable(true);
    VBox page = new VBox();
    page.setMaxWidth(WIDTH);
    page.getStyleClass().add("hc-practice-debrief");
    List<String> outcome = text.outcome();
    page.getChildren().add(Texts.words(outcome.get(0), "hc-large", "hc-strong"));
    outcome.stream().skip(1).forEach(one -> page.getChildren().add(Texts.words(one)));
    page.getChildren().addAll(points(), keep(model, save), onwards(model));
    for (int i = 0; i < debrief.lines().size(); i++) {
      page.getChildren().add(step(i + 1, debrief.lines().get(i)));
    }
    text.next().ifPresent(next -> page.getChildren().add(Texts.words(next, "hc-strong")));
    add(page, "The repair", debrief.repair().map(RepairWords::of).orElse(List.of()));
    add(page, "To remember", text.lesson());
    setContent(page);
  }

  private GridPane points() {
    GridPane points = new GridPane();
    points.setId("practice-points");
    points.getStyleClass().add("hc-practice-table");
    int row = 0;
    for (DebriefText.Points one : text.points()) {
      ProgressBar bar = new ProgressBar(Math.max(0, one.points() / one.most()));
      bar.setPrefWidth(2.4 * one.most());
      bar.setAccessibleText(one.name() + ": " + one.shown());
      Label shown = new Label(one.shown());
      shown.setMinWidth(USE_PREF_SIZE);
      points.addRow(row++, new Label(one.name()), shown, bar, Texts.words(one.why()));
    }
    return points;
  }

  private static FlowPane keep(PracticeModel model, Runnable save) {
    TextField mark = new TextField(model.mark());
    mark.setId("score-mark");
    mark.setPromptText("a mark of your own; no name is needed");
    mark.setPrefColumnCount(22);
    mark.setAccessibleText("A mark of your own");
    mark.textProperty().addListener((property, before, now) -> model.mark(now.strip()));
    Button add = new Button("Add the score to a file …");
    add.setId("save-score");
    add.setOnAction(event -> save.run());
    Label told = new Label();
    told.textProperty().bind(model.saved());
    FlowPane row = new FlowPane(mark, add, told);
    row.getStyleClass().add("hc-buttons");
    return row;
  }

  private static FlowPane onwards(PracticeModel model) {
    FlowPane row = new FlowPane();
    row.getStyleClass().add("hc-buttons");
    model.nextLesson().ifPresent(lesson -> row.getChildren().add(next(model, lesson)));
    Button another = new Button("Another car");
    another.setId("practice-again");
    another.setOnAction(event -> model.leave());
    row.getChildren().add(another);
    return row;
  }

  private static Button next(PracticeModel model, Course.Lesson lesson) {
    Button next = new Button("Next: " + lesson.title());
    next.setId("practice-next");
    next.getStyleClass().add("accent");
    next.setOnAction(event -> model.open(lesson.file()));
    return next;
  }

  private static void add(VBox page, String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    Label title = new Label(heading);
    title.getStyleClass().addAll("hc-large", "hc-strong");
    page.getChildren().add(title);
    sentences.forEach(sentence -> page.getChildren().add(Texts.words(sentence)));
  }

  private HBox step(int number, Debrief.Line line) {
    VBox words = new VBox(Texts.words(number + ". " + line.step().words(), "hc-strong"));
    words.getStyleClass().add("hc-practice-words");
    words.getChildren().add(Texts.words(DebriefText.choice(line)));
    words.getChildren().add(Texts.words(DebriefText.came(line, unit)));
    words
        .getChildren()
        .add(
            Texts.words(
                "It told " + DebriefText.told(line) + ". Points at: " + line.leading() + "."));
    words.getChildren().add(odds(line));
    line.hold()
        .ifPresent(
            curves ->
                text.seen(curves)
                    .forEach(one -> words.getChildren().add(Texts.words(one.in(unit)))));
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox card = new HBox(words);
    card.getStyleClass().add("hc-practice-card");
    line.hold().ifPresent(curves -> card.getChildren().add(chart(curves)));
    return card;
  }

  private static GridPane odds(Debrief.Line line) {
    GridPane odds = new GridPane();
    odds.getStyleClass().add("hc-practice-odds");
    ColumnConstraints words = new ColumnConstraints();
    odds.getColumnConstraints().add(words);
    odds.addRow(0, new Label("You, before"), percent(line.learner()));
    odds.addRow(1, new Label("Your tests, after"), percent(line.evidence()));
    return odds;
  }

  private static Label percent(double share) {
    return new Label(String.format(Locale.ROOT, "%.0f %% for the right answer", 100 * share));
  }

  private SeveralHoldsPanel chart(Debrief.Curves curves) {
    HoldTest read = curves.taken().hold().orElseThrow();
    HoldPlot.Wish plain =
        new HoldPlot.Wish(
            Optional.empty(), List.of(), curves.times()[curves.times().length - 1], false, unit);
    SeveralHoldsPanel panel = new SeveralHoldsPanel();
    panel.show(
        SeveralHolds.of(
            text.curveNames(),
            List.of(
                HoldPlot.of(read, plain),
                curve(read, curves.times(), curves.truth(), plain),
                curve(read, curves.times(), curves.other(), plain))));
    panel.setPrefSize(CHART_WIDTH, CHART_HEIGHT);
    panel.setMinSize(CHART_WIDTH, CHART_HEIGHT);
    return panel;
  }

  /** A curve without readings. */
  private static HoldPlot curve(
      HoldTest read, double[] times, double[] pressures, HoldPlot.Wish wish) {
    HoldTest none = HoldTest.of(read.id(), read.clamped(), new GaugeLog("none", List.of(), 0));
    HoldCurve curve = new HoldCurve(read.id(), times, pressures, pressures, pressures);
    return HoldPlot.of(
        none,
        new HoldPlot.Wish(
            Optional.of(curve), List.of(curve), wish.span(), wish.buildUp(), wish.unit()));
  }
}
