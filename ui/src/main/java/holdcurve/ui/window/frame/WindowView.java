package holdcurve.ui.window.frame;

import holdcurve.common.text.Titles;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The frame: menu, banner, the page on view, progress. */
public final class WindowView {
  private final OpenJobModel model;
  private final Appearance looks;
  private final Desk desk;
  private final List<Page> pages;
  private final BorderPane root = new BorderPane();
  private final BorderPane work = new BorderPane();
  private final BooleanProperty beginning = new SimpleBooleanProperty();
  private final BooleanProperty withoutJob = new SimpleBooleanProperty();
  private final KeyList keys = new KeyList();
  private final WindowMenu menu;
  private final PageRail rail;
  private final EmptyState empty;
  private final Undoing undoing;
  private final FileActions files;

  /**
   * @param pages in the order of the work; at least one
   * @param quit closes the window
   */
  public WindowView(Desk desk, List<Page> pages, Runnable quit) {
    this.desk = desk;
    this.model = desk.jobs();
    this.looks = desk.looks();
    this.pages = pages;
    files = new FileActions(desk, this::begin, quit);
    undoing = new Undoing(desk);
    model.changesAreMadeOn(desk.page()::get);
    model.saveBeforeLeaving(files::save);
    menu = new WindowMenu(desk, files, undoing, pages, this::show, keys);
    empty = new EmptyState(desk, files::open, files::beginWithCircuit, () -> beginning.set(false));
    rail =
        new PageRail(pages, new PathList(model, desk.page()::set), model.pressures(), this::show);
    work.setLeft(rail);
    empty.visibleProperty().bind(model.jobProperty().isNull().and(withoutJob.not()).or(beginning));
    work.visibleProperty().bind(empty.visibleProperty().not());
    empty.managedProperty().bind(empty.visibleProperty());
    work.managedProperty().bind(work.visibleProperty());
    StackPane middle = new StackPane(empty, work, keys);
    JobDrop.accept(middle, model);
    root.setTop(
        new VBox(
            bars(),
            new Banner(model),
            new QuestionStrip(model.questions()),
            new ElsewhereStrip(model, files::saveAs),
            new ExampleStrip(model, desk.page(), files::saveAs),
            new RescueStrip(desk.rescue())));
    root.setCenter(middle);
    root.setBottom(new ProgressStrip(model));
    root.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    UndoKeys.passOn(root, undoing);
    KeyboardPlace.keep(root, () -> show(desk.page().get()));
    model.takenUpProperty().addListener((property, before, now) -> taken(now));
    desk.page().addListener((property, before, now) -> show(now));
    show(pages.get(0));
  }

  private HBox bars() {
    Label unsaved = new Label("not saved");
    unsaved.getStyleClass().addAll("hc-muted", "hc-small");
    unsaved.setMinWidth(Region.USE_PREF_SIZE);
    unsaved.visibleProperty().bind(model.jobProperty().isNotNull().and(model.unsaved()));
    JobTitle title = new JobTitle(model);
    HBox.setHgrow(title, Priority.ALWAYS);
    menu.setMinWidth(Region.USE_PREF_SIZE);
    HBox bars = new HBox(menu, title, unsaved);
    bars.setAlignment(Pos.CENTER_LEFT);
    bars.getStyleClass().add("hc-bars");
    return bars;
  }

  /** Title for the frame of the desktop. */
  public StringBinding windowTitle() {
    return Bindings.createStringBinding(
        () ->
            model.jobProperty().get() == null
                ? "Holdcurve"
                : Titles.shown(model.jobProperty().get().title()) + " – Holdcurve",
        model.jobProperty());
  }

  private void begin() {
    beginning.set(true);
    empty.first().requestFocus();
  }

  /** Another job is turned to where its work goes on: readings first, then what they say. */
  private void taken(Job job) {
    beginning.set(false);
    if (RankableTests.of(job).tests().isEmpty()) {
      show("Hold tests");
    } else {
      show(model.unproved().isPresent() ? "Repair check" : "Suspects");
    }
  }

  private void show(String title) {
    pages.stream().filter(page -> page.title().equals(title)).findFirst().ifPresent(this::show);
  }

  private void show(Page page) {
    if (work.getCenter() != page.content()) {
      work.setCenter(page.content());
      menu.show(page);
      rail.mark(page);
      withoutJob.set(!page.needsJob());
      desk.page().set(page.title());
    }
    page.focus();
  }

  /** Keys beside those of the menu: escape, and the plus and minus of other keyboards. */
  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case ESCAPE -> escape();
      case EQUALS, ADD -> onShortcut(event, looks::enlarge);
      case SUBTRACT -> onShortcut(event, looks::shrink);
      case Y -> onShortcut(event, undoing::redo);
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
    if (keys.isVisible()) {
      keys.close();
    } else if (model.questions().askedProperty().get() != null) {
      model.questions().stay();
    } else if (beginning.get()) {
      beginning.set(false);
    } else if (!model.problemProperty().get().isEmpty()) {
      model.dismissProblem();
    } else {
      model.ranking().cancel();
      model.work().cancelAll();
    }
  }

  /** What closing the window does: the same as the entry of the menu. */
  public void quit() {
    files.quit();
  }

  public Parent root() {
    return root;
  }
}
