package holdcurve.ui.window.help;

import holdcurve.ui.about.Build;
import holdcurve.ui.about.Library;
import holdcurve.ui.theme.Appearance;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** Which version this is, its licence, and the libraries in it. */
public final class AboutWindow {
  private AboutWindow() {}

  /** Shows it. */
  public static void show(Appearance looks) {
    Label name = new Label("Holdcurve " + Build.version());
    name.getStyleClass().addAll("hc-large", "hc-strong");
    Label licence = new Label("Licence: " + Build.LICENCE);
    Label platform = new Label(Build.platform());
    platform.getStyleClass().addAll("hc-muted", "hc-small");
    platform.setWrapText(true);
    Label heading = new Label("Libraries in it, with their licences");
    heading.getStyleClass().add("hc-heading");
    VBox page = new VBox(name, licence, platform, heading, libraries());
    page.getStyleClass().add("hc-guide");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setId("about");
    scroll.setFitToWidth(true);
    Stage stage = SideWindow.of("About", scroll, looks, 680, 620);
    stage.show();
  }

  private static GridPane libraries() {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("hc-guide-table");
    List<Library> all = Library.all();
    for (int line = 0; line < all.size(); line++) {
      Library library = all.get(line);
      grid.addRow(
          line,
          new Label(library.name()),
          new Label(library.version()),
          new Label(library.licences()));
    }
    return grid;
  }
}
