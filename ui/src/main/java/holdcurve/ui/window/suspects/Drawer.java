package holdcurve.ui.window.suspects;

import holdcurve.ui.window.frame.Scrolled;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** Everything in words below the plot: one tab a question that the ranking raises. */
final class Drawer extends TabPane {
  private final Tab nextTest;
  private final Tab notes;

  /**
   * @param turnToHolds shows where readings are taken
   */
  Drawer(SuspectsModel model, NextTestModel next, Runnable turnToHolds) {
    setId("drawer");
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    NotesPane noted = new NotesPane(model);
    nextTest = tab("Next test", new NextTestPane(next, turnToHolds));
    notes = tab("Notes", noted);
    notes.textProperty().bind(noted.countProperty().asString("Notes (%d)"));
    getTabs()
        .addAll(
            tab("The suspect", Scrolled.downAround(new SuspectDetails(model))),
            nextTest,
            tab("The fall", new FallPane(model)),
            tab("Why", new ReasonsPane(model)),
            notes);
  }

  private static Tab tab(String title, Node content) {
    Tab tab = new Tab(title, content);
    tab.setId("drawer-" + title.toLowerCase(Locale.ROOT).replace(' ', '-'));
    return tab;
  }

  /** Turns to the tab with an id, and from it back to the suspect. */
  private void turn(Tab tab) {
    if (tab.isSelected()) {
      getSelectionModel().selectFirst();
    } else {
      getSelectionModel().select(tab);
    }
  }

  void turnToNextTest() {
    turn(nextTest);
  }

  void turnToNotes() {
    turn(notes);
  }

  /** Goes on by one tab, round at the end. */
  void turnOn() {
    int next = getSelectionModel().getSelectedIndex() + 1;
    getSelectionModel().select(Math.floorMod(next, getTabs().size()));
  }
}
