package holdcurve.ui.window.frame;

import holdcurve.ui.guide.Guide;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.help.AboutWindow;
import holdcurve.ui.window.help.GuideWindow;
import holdcurve.ui.window.help.ProblemWindow;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Everything that can be done, with its keys. */
final class WindowMenu extends MenuBar {
  private static final List<KeyCode> DIGITS =
      List.of(
          KeyCode.DIGIT1,
          KeyCode.DIGIT2,
          KeyCode.DIGIT3,
          KeyCode.DIGIT4,
          KeyCode.DIGIT5,
          KeyCode.DIGIT6,
          KeyCode.DIGIT7,
          KeyCode.DIGIT8,
          KeyCode.DIGIT9);

  private final Menu page = new Menu("_Page");
  private final Desk desk;
  private final OpenJobModel model;
  private final BooleanBinding noJob;

  /** Whether the page on view needs no open job. */
  private final BooleanProperty withoutJob = new SimpleBooleanProperty();

  /**
   * @param files what the menu "File" does
   * @param pages in the order of the work
   * @param show turns to a page
   * @param keys lists all keys
   */
  WindowMenu(
      Desk desk,
      FileActions files,
      Undoing undoing,
      List<Page> pages,
      Consumer<Page> show,
      KeyList keys) {
    this.desk = desk;
    model = desk.jobs();
    noJob = model.jobProperty().isNull();
    page.disableProperty().bind(noJob.and(withoutJob.not()));
    List<Menu> always = List.of(file(desk, files), edit(undoing), view(desk), go(pages, show));
    getMenus().addAll(always);
    getMenus().addAll(page, help(() -> keys.show(always, pages), pages));
  }

  private Menu file(Desk desk, FileActions files) {
    return new Menu(
        "_File",
        null,
        item("_New job …", onShortcut(KeyCode.N), files::begin),
        item("_Open a job …", onShortcut(KeyCode.O), files::open),
        whereJob(item("_Save", onShortcut(KeyCode.S), files::save)),
        whereJob(item("Save _as …", onShiftShortcut(KeyCode.S), files::saveAs)),
        readAgain(),
        new SeparatorMenuItem(),
        item("Folder of _plugins …", null, files::choosePlugins),
        withoutPlugins(desk, files),
        new SeparatorMenuItem(),
        item("_Quit", onShortcut(KeyCode.Q), files::quit));
  }

  private MenuItem readAgain() {
    MenuItem item = item("_Read the file again", onShortcut(KeyCode.R), model::reload);
    item.disableProperty().bind(model.fileProperty().isNull());
    return item;
  }

  /** Says which folder is in use, and takes it out of use. */
  private static MenuItem withoutPlugins(Desk desk, FileActions files) {
    ObjectProperty<Path> folder = desk.faults().folderProperty();
    MenuItem item = item("", null, files::dropPlugins);
    item.setMnemonicParsing(false);
    item.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    folder.get() == null
                        ? "No plugins in use"
                        : "Stop using plugins of " + folder.get(),
                folder));
    item.disableProperty().bind(folder.isNull());
    return item;
  }

  private Menu edit(Undoing undoing) {
    MenuItem undo = item("Undo", onShortcut(KeyCode.Z), undoing::undo);
    name(undo, "Undo", model.undoNameProperty());
    MenuItem redo = item("Redo", onShiftShortcut(KeyCode.Z), undoing::redo);
    name(redo, "Redo", model.redoNameProperty());
    return new Menu(
        "_Edit",
        null,
        undo,
        redo,
        new SeparatorMenuItem(),
        whereJob(item("_Rank", new KeyCodeCombination(KeyCode.F5), this::rank)));
  }

  /** Readings and circuit are left for what they say; other pages show that in their own way. */
  private void rank() {
    model.rank();
    if (Set.of("Circuit", "Hold tests").contains(desk.page().get())) {
      desk.page().set("Suspects");
    }
  }

  private static void name(MenuItem item, String verb, ObservableStringValue what) {
    item.setMnemonicParsing(false);
    item.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> what.get().isEmpty() ? verb : verb + " " + what.get(), what));
    item.disableProperty().bind(Bindings.createBooleanBinding(() -> what.get().isEmpty(), what));
  }

  private Menu view(Desk desk) {
    Appearance looks = desk.looks();
    return new Menu(
        "_View",
        null,
        item("Light or _dark", onShortcut(KeyCode.D), looks::switchTheme),
        item("High _contrast", onShiftShortcut(KeyCode.D), looks::switchContrast),
        item("Pressures in bar, kPa or _psi", onShortcut(KeyCode.U), model.pressures()::next),
        new SeparatorMenuItem(),
        item("_Larger text", onShortcut(KeyCode.PLUS), looks::enlarge),
        item("_Smaller text", onShortcut(KeyCode.MINUS), looks::shrink),
        item("_Usual text", onShortcut(KeyCode.DIGIT0), looks::usualSize));
  }

  private Menu go(List<Page> pages, Consumer<Page> show) {
    Menu go = new Menu("_Go to");
    for (int i = 0; i < pages.size(); i++) {
      Page one = pages.get(i);
      KeyCombination keys = i < DIGITS.size() ? onShortcut(DIGITS.get(i)) : null;
      go.getItems().add(item(one.title(), keys, () -> show.accept(one)));
    }
    go.disableProperty().bind(noJob.and(withoutJob.not()));
    return go;
  }

  private Menu help(Runnable keys, List<Page> pages) {
    GuideWindow guide = new GuideWindow(desk.looks());
    ProblemWindow problem =
        new ProblemWindow(
            model,
            desk.looks(),
            name -> desk.dialogs().save(FileKind.PROBLEM, model.fileProperty().get(), name));
    return new Menu(
        "_Help",
        null,
        item(
            "_Guide",
            new KeyCodeCombination(KeyCode.F1),
            () -> guide.show(Guide.forPage(topic(pages)))),
        item("_Keys", onShortcut(KeyCode.F1), keys),
        whereJob(item("_Report a problem …", null, problem::show)),
        item("_About", null, () -> AboutWindow.show(desk.looks())));
  }

  private String topic(List<Page> pages) {
    String title = desk.page().get();
    return pages.stream()
        .filter(page -> page.title().equals(title))
        .map(Page::topic)
        .findFirst()
        .orElse(title);
  }

  private MenuItem whereJob(MenuItem item) {
    item.disableProperty().bind(noJob);
    return item;
  }

  /** Offers what the page on view can do. */
  void show(Page shown) {
    withoutJob.set(!shown.needsJob());
    page.getItems().setAll(shown.actions());
  }

  private static KeyCombination onShortcut(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }

  private static KeyCombination onShiftShortcut(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
  }

  private static MenuItem item(String text, KeyCombination keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setMnemonicParsing(true);
    item.setAccelerator(keys);
    item.setOnAction(event -> what.run());
    return item;
  }
}
