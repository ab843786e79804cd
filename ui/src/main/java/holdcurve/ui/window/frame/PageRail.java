package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.PressureFormat;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The list of pages at the left edge, and below it the unit of pressures. */
final class PageRail extends VBox {
  private final ToggleGroup group = new ToggleGroup();
  private Page marked;

  /**
   * @param path how far the job is
   */
  PageRail(List<Page> pages, Node path, PressureFormat pressures, Consumer<Page> show) {
    getStyleClass().add("hc-rail");
    setMinWidth(USE_PREF_SIZE);
    VBox list = new VBox();
    list.setId("pages");
    list.getStyleClass().add("hc-rail-pages");
    for (Page page : pages) {
      list.getChildren().add(button(page, show));
    }
    mark(pages.get(0));
    // arrow keys select a button without pressing it
    group.selectedToggleProperty().addListener(property -> mark(marked));
    list.setVisible(pages.size() > 1);
    list.setManaged(pages.size() > 1);
    Region gap = new Region();
    setVgrow(gap, Priority.ALWAYS);
    Label unit = new Label("Pressures in");
    unit.getStyleClass().addAll("hc-muted", "hc-small");
    path.managedProperty().bind(path.visibleProperty().and(list.visibleProperty()));
    getChildren().addAll(list, path, gap, unit, new UnitSwitch(pressures));
  }

  private ToggleButton button(Page page, Consumer<Page> show) {
    ToggleButton button = new ToggleButton(page.title());
    button.setToggleGroup(group);
    button.setUserData(page);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> show.accept(page));
    return button;
  }

  /** Marks a page as the one on view. */
  void mark(Page page) {
    marked = page;
    for (Toggle toggle : group.getToggles()) {
      if (toggle.getUserData() == page) {
        group.selectToggle(toggle);
      }
    }
  }

  /** Bar, kPa or psi. */
  private static final class UnitSwitch extends HBox {
    UnitSwitch(PressureFormat pressures) {
      setId("units");
      getStyleClass().add("hc-units");
      ToggleGroup units = new ToggleGroup();
      PressureFormat.CHOICES.forEach(
          unit -> {
            ToggleButton button = new ToggleButton(unit.symbol());
            button.getStyleClass().add("hc-small");
            button.setToggleGroup(units);
            button.setMinWidth(USE_PREF_SIZE);
            button.setFocusTraversable(false);
            button.setSelected(pressures.unit() == unit);
            button.setOnAction(
                event -> {
                  button.setSelected(true);
                  pressures.unitProperty().set(unit);
                });
            pressures
                .unitProperty()
                .addListener((property, before, now) -> button.setSelected(now == unit));
            getChildren().add(button);
          });
    }
  }
}
