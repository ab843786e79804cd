package holdcurve.ui.window.frame;

import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The frame: menu, banner, the page on view, progress. */
public final class WindowView {
  private final OpenJobModel model;
  private final Looks looks;
  private final BorderPane root = new BorderPane();
  private final BorderPane work = new BorderPane();
  private final WindowMenu menu;

  /**
   * @param pages in the order of the work; at least one
   * @param quit closes the window
   */
  public WindowView(
      OpenJobModel model, Looks looks, List<Page> pages, FileDialogs dialogs, Runnable quit) {
    this.model = model;
    this.looks = looks;
    Runnable open = () -> dialogs.chooseJob(model.fileProperty().get()).ifPresent(model::open);
    menu = new WindowMenu(model, looks, open, quit);
    EmptyState empty = new EmptyState(open);
    work.setLeft(new PageRail(pages, this::show));
    work.visibleProperty().bind(model.jobProperty().isNotNull());
    empty.visibleProperty().bind(model.jobProperty().isNull());
    StackPane middle = new StackPane(empty, work);
    JobDrop.accept(middle, model);
    root.setTop(new VBox(bars(), new Banner(model)));
    root.setCenter(middle);
    root.setBottom(new ProgressStrip(model));
    root.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    show(pages.get(0));
  }

  private HBox bars() {
    Label title = new Label();
    title.getStyleClass().add("hc-job-title");
    title.textProperty().bind(jobTitle());
    title.setMaxWidth(Double.MAX_VALUE);
    title.setAlignment(Pos.CENTER_RIGHT);
    title.setStyle("-fx-padding: 0 0.9em 0 0.9em;");
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox bars = new HBox(menu, title);
    bars.setAlignment(Pos.CENTER_LEFT);
    bars.getStyleClass().add("hc-bars");
    return bars;
  }

  private StringBinding jobTitle() {
    return Bindings.createStringBinding(
        () -> model.jobProperty().get() == null ? "" : model.jobProperty().get().title(),
        model.jobProperty());
  }

  /** Title for the frame of the desktop. */
  public StringBinding windowTitle() {
    StringBinding job = jobTitle();
    return Bindings.createStringBinding(
        () -> job.get().isEmpty() ? "Holdcurve" : job.get() + " – Holdcurve", job);
  }

  private void show(Page page) {
    work.setCenter(page.content());
    menu.show(page);
    page.focus();
  }

  /** Keys beside those of the menu: escape, and the plus and minus of other keyboards. */
  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case ESCAPE -> escape();
      case EQUALS, ADD -> onShortcut(event, looks::enlarge);
      case SUBTRACT -> onShortcut(event, looks::shrink);
      default -> {}
    }
  }

  private static void onShortcut(KeyEvent event, Runnable what) {
    if (event.isShortcutDown()) {
      what.run();
      event.consume();
    }
  }

  private void escape() {
    if (!model.problemProperty().get().isEmpty()) {
      model.dismissProblem();
    } else {
      model.ranking().cancel();
    }
  }

  public Parent root() {
    return root;
  }
}
