package holdcurve.ui.window.suspects;

import holdcurve.ui.window.circuit.SuspectPlacesModel;
import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.OutOfDate;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.Pictures;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Measured against simulated, and who explains it. */
public final class SuspectsPage implements Page {
  /** Share of the width that the ranking takes, within its own limits [-]. */
  private static final double RANKING_SHARE = 0.37;

  /** Least height of the plots with their words [sizes of the text]. */
  private static final double PLOT_LETTERS = 16;

  /** Least height of the words below it [sizes of the text]. */
  private static final double LEAST_LETTERS = 8;

  /** Most width of the ranking [sizes of the text]. */
  private static final double RANKING_LETTERS = 41;

  /** Share of the height that the words below the plot take [-]. */
  private static final double DRAWER_SHARE = 0.44;

  private final SuspectsModel model;
  private final Desk desk;
  private final BorderPane content = new BorderPane();
  private final TestTabs tests;
  private final RankingPanel ranking;
  private final Drawer drawer;

  public SuspectsPage(SuspectsModel model, NextTestModel next, Desk desk) {
    this.model = model;
    this.desk = desk;
    tests = new TestTabs(model, new SuspectPlacesModel(desk.jobs(), desk.faults()));
    Pictures.offer(tests, tests::picture, desk, "suspects");
    ranking = new RankingPanel(model);
    Runnable holds = () -> desk.page().set("Hold tests");
    drawer = new Drawer(model, next, holds);
    VBox.setVgrow(tests, Priority.ALWAYS);
    tests.setPrefHeight(0);
    tests.minHeightProperty().bind(desk.looks().textSizeProperty().multiply(PLOT_LETTERS));
    drawer.setMinHeight(0);
    VBox left = new VBox(tests, drawer);
    drawer
        .prefHeightProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> drawerHeight(left.getHeight()),
                left.heightProperty(),
                desk.looks().textSizeProperty()));
    left.setMinWidth(0);
    left.setPrefWidth(0);
    HBox.setHgrow(left, Priority.ALWAYS);
    ranking.prefWidthProperty().bind(content.widthProperty().multiply(RANKING_SHARE));
    ranking.maxWidthProperty().bind(desk.looks().textSizeProperty().multiply(RANKING_LETTERS));
    VerdictBar verdict = new VerdictBar(model, new WayOn(model, next, desk));
    HBox middle = new HBox(left, ranking);
    content.setTop(new VBox(OutOfDate.ranking(desk, verdict, middle), verdict));
    content.setCenter(middle);
    model.ranking().addListener((property, before, now) -> focus());
  }

  /**
   * Its share, as far as that leaves the plot readable; at large text that comes first. Whatever
   * tab is read, so that the tabs stay where they are.
   */
  private double drawerHeight(double all) {
    double letter = desk.looks().textSizeProperty().get();
    return Math.max(
        LEAST_LETTERS * letter, Math.min(DRAWER_SHARE * all, all - PLOT_LETTERS * letter));
  }

  @Override
  public String title() {
    return "Suspects";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<KeyUse> keys() {
    return List.of(
        new KeyUse("\u2191 \u2193", "From suspect to suspect"),
        new KeyUse("\u2190 \u2192", "In the plot of all holds: from reading to reading"),
        new KeyUse("+ \u2212 0", "In that plot: nearer, farther, all of it"),
        new KeyUse("Ctrl+wheel, drag", "In any plot: nearer, and move it"));
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        Actions.of("Next picture", Actions.onShortcut(KeyCode.PAGE_DOWN), () -> tests.go(1)),
        Actions.of("Previous picture", Actions.onShortcut(KeyCode.PAGE_UP), () -> tests.go(-1)),
        Actions.of("To the list of suspects", Actions.onShortcut(KeyCode.L), this::focus),
        Actions.of("Next test to do", Actions.onShortcut(KeyCode.T), drawer::turnToNextTest),
        Actions.of("Notes", Actions.onShortcut(KeyCode.E), drawer::turnToNotes),
        Actions.of("What is told below the plot", Actions.onShortcut(KeyCode.J), drawer::turnOn),
        Actions.of("Copy the picture", Pictures.COPY, () -> Pictures.copy(tests.picture())),
        Actions.of(
            "Save the picture …", null, () -> Pictures.save(tests.picture(), desk, "suspects")),
        Actions.of("Save the ranking as CSV or JSON …", null, this::save));
  }

  private void save() {
    desk.dialogs()
        .save(FileKind.RANKING, desk.jobs().fileProperty().get(), "ranking.csv")
        .ifPresent(model::save);
  }

  @Override
  public void focus() {
    ranking.focusList();
  }
}
