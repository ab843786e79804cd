package holdcurve.ui.window.suspects;

import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.PlotPanel;
import java.util.List;
import java.util.stream.IntStream;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** One tab a hold test. */
final class TestTabs extends TabPane {
  private final SuspectsModel model;

  TestTabs(SuspectsModel model) {
    this.model = model;
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, before, now) ->
                model.shownTestProperty().set(now == null ? "" : now.getText()));
    model.plots().addListener((ListChangeListener<HoldPlot>) change -> update());
    update();
  }

  private void update() {
    List<HoldPlot> plots = model.plots();
    List<String> ids = plots.stream().map(HoldPlot::test).toList();
    if (!getTabs().stream().map(Tab::getText).toList().equals(ids)) {
      getTabs().setAll(ids.stream().map(this::tab).toList());
      getSelectionModel().selectFirst();
    }
    SuspectRow chosen = model.chosenProperty().get();
    String name = chosen == null ? "" : chosen.suspect().name();
    for (int i = 0; i < plots.size(); i++) {
      ((PlotPanel) getTabs().get(i).getContent()).show(plots.get(i), name);
    }
    turnToCurve(plots);
  }

  /** A hold from before a repair isn't ranked, and has no curve of a suspect. */
  private void turnToCurve(List<HoldPlot> plots) {
    int shown = getSelectionModel().getSelectedIndex();
    if (shown >= 0 && plots.get(shown).curve().isEmpty()) {
      IntStream.range(0, plots.size())
          .filter(i -> plots.get(i).curve().isPresent())
          .findFirst()
          .ifPresent(getSelectionModel()::select);
    }
  }

  private Tab tab(String id) {
    return new Tab(id, new PlotPanel(model.showBuildUpProperty()));
  }

  /** Goes on by {@code step} tests, round at the ends. */
  void go(int step) {
    if (!getTabs().isEmpty()) {
      int now = getSelectionModel().getSelectedIndex();
      getSelectionModel().select(Math.floorMod(now + step, getTabs().size()));
    }
  }
}
