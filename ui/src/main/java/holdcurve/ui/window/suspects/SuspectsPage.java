package holdcurve.ui.window.suspects;

import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.Scrolled;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Measured against simulated, and who explains it. */
public final class SuspectsPage implements Page {
  /** Share of the width that the ranking takes, within its own limits [-]. */
  private static final double RANKING_SHARE = 0.37;

  /** Least height of the plots with their words [sizes of the text]. */
  private static final double PLOT_LETTERS = 17;

  /** From this height on the details stay while the next test is unfolded [sizes of the text]. */
  private static final double ROOM_FOR_ALL = 55;

  private final SuspectsModel model;
  private final Desk desk;
  private final BorderPane content = new BorderPane();
  private final TestTabs tests;
  private final RankingPanel ranking;
  private final NotesStrip notes;
  private final NextTestStrip nextTest;

  public SuspectsPage(SuspectsModel model, NextTestModel next, Desk desk) {
    this.model = model;
    this.desk = desk;
    tests = new TestTabs(model);
    ranking = new RankingPanel(model);
    notes = new NotesStrip(model);
    VBox.setVgrow(tests, Priority.ALWAYS);
    nextTest = new NextTestStrip(next);
    ScrollPane details = details();
    VBox left = new VBox(tests, details);
    left.setMinWidth(0);
    left.setPrefWidth(0);
    HBox.setHgrow(left, Priority.ALWAYS);
    ranking.prefWidthProperty().bind(content.widthProperty().multiply(RANKING_SHARE));
    content.setTop(new VerdictBar(model));
    content.setCenter(new HBox(left, ranking));
    content.setBottom(new VBox(nextTest, notes));
    model.ranking().addListener((property, before, now) -> focus());
  }

  /** Gives way to the plot, and is gone while the next test takes the room of both. */
  private ScrollPane details() {
    ScrollPane details = Scrolled.downAround(new SuspectDetails(model));
    details.getStyleClass().add("hc-details-scroll");
    details.setMinHeight(0);
    details.setMaxHeight(Region.USE_PREF_SIZE);
    VBox.setVgrow(details, Priority.SOMETIMES);
    ReadOnlyIntegerProperty letter = desk.looks().textSizeProperty();
    tests.setPrefHeight(0);
    tests.minHeightProperty().bind(letter.multiply(PLOT_LETTERS));
    details
        .visibleProperty()
        .bind(
            nextTest
                .expandedProperty()
                .not()
                .or(content.heightProperty().greaterThan(letter.multiply(ROOM_FOR_ALL))));
    details.managedProperty().bind(details.visibleProperty());
    return details;
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
  public List<MenuItem> actions() {
    return List.of(
        Actions.of("Next hold test", Actions.onShortcut(KeyCode.PAGE_DOWN), () -> tests.go(1)),
        Actions.of("Previous hold test", Actions.onShortcut(KeyCode.PAGE_UP), () -> tests.go(-1)),
        Actions.of("To the list of suspects", Actions.onShortcut(KeyCode.L), this::focus),
        Actions.of(
            "Fold the next test in or out",
            Actions.onShortcut(KeyCode.T),
            () -> nextTest.setExpanded(!nextTest.isExpanded())),
        Actions.of(
            "Fold notes in or out",
            Actions.onShortcut(KeyCode.E),
            () -> notes.setExpanded(!notes.isExpanded())),
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
