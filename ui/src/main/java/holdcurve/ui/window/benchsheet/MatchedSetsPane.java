package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.MatchedSets;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The injectors of the sheet sorted into sets for engines. */
final class MatchedSetsPane extends VBox {
  private static final int LEAST = 2;
  private static final int MOST = 16;
  private static final int USUAL = 4;

  private final BenchSheetModel model;
  private final Spinner<Integer> size = new Spinner<>(LEAST, MOST, USUAL);
  private final VBox sets = new VBox();

  MatchedSetsPane(BenchSheetModel model) {
    this.model = model;
    getStyleClass().add("hc-matched");
    size.setId("set-size");
    size.setPrefWidth(90);
    size.setAccessibleText("injectors to a set");
    sets.setId("matched-sets");
    sets.getStyleClass().add("hc-matched-sets");
    Label name = new Label("Injectors to a set");
    name.setLabelFor(size);
    HBox row = new HBox(name, size);
    row.getStyleClass().add("hc-named");
    ScrollPane scroll = new ScrollPane(sets);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Texts.words(
                "From the injectors of the flow bench's sheet: sets whose flows lie as close"
                    + " together as they can, one for each engine."),
            row,
            scroll);
    size.valueProperty().addListener((property, before, now) -> show());
    model.reportProperty().addListener((property, before, now) -> show());
    show();
  }

  private void show() {
    Optional<MatchedSets> matched = model.matched(size.getValue());
    sets.getChildren().clear();
    if (matched.isEmpty()) {
      sets.getChildren()
          .add(
              Texts.words(
                  "The sheet has "
                      + model.fitToMatch()
                      + " injectors that are fit to be matched (flow measured, no drip, good spray"
                      + " and coil). Fill the sheet in, or ask for smaller sets.",
                  "hc-muted"));
      return;
    }
    int number = 1;
    for (MatchedSets.MatchedSet set : matched.get().sets()) {
      sets.getChildren().add(card(number++, set));
    }
    rest("Left over", matched.get().left());
    rest("Not fit to refit", matched.get().unfit());
  }

  private static Node card(int number, MatchedSets.MatchedSet set) {
    Label title = Texts.heading("Set " + number);
    Label ids = Texts.words(String.join(",  ", set.ids()), "hc-strong");
    Label figures =
        Texts.words(
            String.format(
                Locale.ROOT,
                "mean %.0f mL/min, the largest %.1f %% above the smallest",
                set.mean() * 60e6,
                100 * set.spread()));
    VBox card = new VBox(title, ids, figures);
    for (String flag : set.flags()) {
      Label warning = Texts.words(flag);
      warning.setGraphic(Sign.WARNING.node());
      card.getChildren().add(warning);
    }
    card.getStyleClass().add("hc-practice-card");
    return card;
  }

  private void rest(String what, List<String> ids) {
    if (!ids.isEmpty()) {
      sets.getChildren().add(Texts.words(what + ": " + String.join(", ", ids) + "."));
    }
  }

  void focusFirst() {
    size.requestFocus();
  }
}
