package holdcurve.ui.window.suspects;

import holdcurve.ui.window.circuit.SuspectPlacesModel;
import holdcurve.ui.window.circuit.SuspectPlacesPane;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.PlotPanel;
import holdcurve.ui.window.plot.SeveralHoldsPanel;
import java.util.List;
import java.util.stream.Stream;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** The answer in pictures: where it is, all holds together, and one tab a hold test. */
final class TestTabs extends TabPane {
  private final SuspectsModel model;
  private final SuspectPlacesPane places;
  private final SeveralHoldsPanel together = new SeveralHoldsPanel();
  private final Tab where;
  private final Tab all = new Tab("All holds", together);

  TestTabs(SuspectsModel model, SuspectPlacesModel placed) {
    this.model = model;
    setId("pictures");
    places = new SuspectPlacesPane(placed);
    where = new Tab("Where it is", places);
    where.setId("picture-places");
    all.setId("picture-holds");
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    getTabs().addAll(where, all);
    getSelectionModel().selectedItemProperty().addListener((property, before, now) -> look());
    model.plots().addListener((ListChangeListener<HoldPlot>) change -> update());
    update();
  }

  /** What is told of one hold is told of the first while no single one is looked at. */
  private void look() {
    Tab tab = getSelectionModel().getSelectedItem();
    boolean one = tab != where && tab != all && tab != null;
    List<HoldPlot> plots = model.plots();
    model.shownTestProperty().set(one ? tab.getText() : ranked(plots).orElse(""));
  }

  private static java.util.Optional<String> ranked(List<HoldPlot> plots) {
    return Stream.concat(plots.stream().filter(plot -> plot.curve().isPresent()), plots.stream())
        .map(HoldPlot::test)
        .findFirst();
  }

  private List<Tab> single() {
    return getTabs().subList(2, getTabs().size());
  }

  private void update() {
    List<HoldPlot> plots = model.plots();
    List<String> ids = plots.stream().map(HoldPlot::test).toList();
    if (!single().stream().map(Tab::getText).toList().equals(ids)) {
      getTabs().setAll(Stream.concat(Stream.of(where, all), ids.stream().map(this::tab)).toList());
      getSelectionModel().selectFirst();
    }
    SuspectRow chosen = model.chosenProperty().get();
    String name = chosen == null ? "" : chosen.suspect().name();
    for (int i = 0; i < plots.size(); i++) {
      ((PlotPanel) single().get(i).getContent()).show(plots.get(i), name);
    }
    model.together().ifPresent(together::show);
    all.setDisable(model.together().isEmpty());
    look();
  }

  private Tab tab(String id) {
    return new Tab(id, new PlotPanel(model.showBuildUpProperty()));
  }

  /** The picture on view. */
  Node picture() {
    return getSelectionModel().getSelectedItem().getContent();
  }

  /** Goes on by {@code step} pictures, round at the ends. */
  void go(int step) {
    int now = getSelectionModel().getSelectedIndex();
    getSelectionModel().select(Math.floorMod(now + step, getTabs().size()));
  }
}
