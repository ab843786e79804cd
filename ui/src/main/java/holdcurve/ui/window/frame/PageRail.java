package holdcurve.ui.window.frame;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;

/** The list of pages at the left edge. A single page needs no list, so then it stays away. */
final class PageRail extends VBox {
  private final ToggleGroup group = new ToggleGroup();

  PageRail(List<Page> pages, Consumer<Page> show) {
    setId("pages");
    getStyleClass().add("hc-rail");
    for (Page page : pages) {
      ToggleButton button = new ToggleButton(page.title());
      button.setToggleGroup(group);
      button.setMaxWidth(Double.MAX_VALUE);
      button.setOnAction(
          event -> {
            button.setSelected(true);
            show.accept(page);
          });
      getChildren().add(button);
    }
    group.selectToggle(group.getToggles().get(0));
    setVisible(pages.size() > 1);
    setManaged(pages.size() > 1);
  }
}
