package holdcurve.ui.window;

import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.WindowView;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.suspects.SuspectsModel;
import holdcurve.ui.window.suspects.SuspectsPage;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Puts model, pages and looks together on a stage. This is where a new page is added. */
public final class HoldcurveWindow {
  /** Everything fits from here on [px]. */
  private static final double WIDTH = 1280;

  private static final double HEIGHT = 720;

  /** Share of the screen that a new window takes where there is room [-]. */
  private static final double SHARE = 0.85;

  private HoldcurveWindow() {}

  /**
   * Fills a stage; showing it is up to the caller.
   *
   * @param dialogs made for the window that owns them
   */
  public static void fill(
      Stage stage, OpenJobModel model, Looks looks, Function<Stage, FileDialogs> dialogs) {
    List<Page> pages = List.of(new SuspectsPage(new SuspectsModel(model)));
    WindowView view = new WindowView(model, looks, pages, dialogs.apply(stage), stage::close);
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    Scene scene =
        new Scene(
            view.root(),
            Math.max(WIDTH, SHARE * screen.getWidth()),
            Math.max(HEIGHT, SHARE * screen.getHeight()));
    looks.dress(scene);
    stage.setScene(scene);
    stage.setMaximized(screen.getWidth() <= WIDTH || screen.getHeight() <= HEIGHT);
    stage.setMinWidth(800);
    stage.setMinHeight(560);
    stage.titleProperty().bind(view.windowTitle());
  }
}
