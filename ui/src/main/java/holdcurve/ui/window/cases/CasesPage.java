package holdcurve.ui.window.cases;

import holdcurve.casebook.BrokenCase;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.JobState;
import holdcurve.record.job.HoldTest;
import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.SeveralHolds;
import holdcurve.ui.window.plot.SeveralHoldsPanel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** All jobs of a garage, what their repairs taught, and the holds of one car over the years. */
public final class CasesPage implements Page {
  /** Most holds that one plot shows: more would hide one another. */
  private static final int MOST_HOLDS = 8;

  private static final double MOST_BROKEN_HEIGHT = 90;

  private final CasesModel model;
  private final Desk desk;
  private final StackPane content = new StackPane();
  private final TabPane tabs = new TabPane();
  private final TextField search = new TextField();
  private final FlowPane folders = new FlowPane();
  private final Label broken = Texts.aside("");
  private final ScrollPane brokenScroll = Scrolled.down(broken);
  private final Label counted = Texts.aside("");
  private final Label carSays = Texts.words("", "hc-muted");
  private final SeveralHoldsPanel holds = new SeveralHoldsPanel();
  private final CaseList list;
  private final CaseDetails details;
  private final VBox empty;
  private final Tab carTab;

  public CasesPage(CasesModel model, Desk desk) {
    this.model = model;
    this.desk = desk;
    list = new CaseList(model);
    details = new CaseDetails(model, list::open, this::showCar);
    empty = empty();
    carTab = new Tab("This car", car());
    tabs.setId("cases-tabs");
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    tabs.getTabs()
        .addAll(
            new Tab("Jobs", jobsTab()),
            new Tab("Fault rates", new RatesPane(model, this::openRates, this::saveRates)),
            carTab);
    content.setId("cases-page");
    content.getChildren().addAll(tabs, empty);
    tabs.visibleProperty().bind(empty.visibleProperty().not());
    list.chosenProperty().addListener((property, before, now) -> showChosen());
    model.shownProperty().addListener((property, before, now) -> show(now));
    model.entries().addListener((ListChangeListener<CaseEntry>) change -> count());
    desk.page()
        .addListener(
            (property, before, now) -> {
              if (title().equals(now)) {
                model.look();
              }
            });
    empty.setVisible(false);
  }

  private VBox empty() {
    Label title = Texts.large("No folder is chosen yet");
    Label words =
        Texts.words(
            "The case book lists all jobs in the folders you choose. It only reads them. From proven"
                + " repairs it learns which faults are common in your garage.");
    Button add = button("Choose a folder …", "first-folder", this::addFolder);
    add.getStyleClass().add("accent");
    VBox box = new VBox(title, words, add);
    box.setMaxWidth(560);
    box.setMaxHeight(VBox.USE_PREF_SIZE);
    box.getStyleClass().add("hc-cases-empty");
    return box;
  }

  private static Button button(String text, String id, Runnable what) {
    Button button = new Button(text);
    button.setId(id);
    button.setMinWidth(Button.USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }

  private Node jobsTab() {
    search.setId("case-search");
    search.setPromptText("car, verdict, repair or file");
    search.setPrefColumnCount(16);
    search.textProperty().bindBidirectional(model.searchProperty());
    Label find = new Label("Search");
    find.setLabelFor(search);
    find.setMinWidth(Label.USE_PREF_SIZE);
    ComboBox<Optional<JobState>> state = new ComboBox<>();
    state.setId("case-state");
    state.setAccessibleText("Only jobs that are so far");
    Named.in(state, "every state", one -> one.map(JobState::words).orElse("every state"));
    state.getItems().add(Optional.empty());
    Stream.of(JobState.values()).map(Optional::of).forEach(state.getItems()::add);
    state
        .valueProperty()
        .addListener((property, before, now) -> model.stateProperty().set(now.orElse(null)));
    FlowPane top =
        new FlowPane(
            new HBox(find, search),
            state,
            button("Rank those without a verdict", "rank-cases", model::rankListed),
            button("Export the list …", "export-cases", this::saveCases),
            counted);
    top.getChildren().get(0).getStyleClass().add("hc-named");
    top.getStyleClass().addAll("hc-case-line", "hc-page-top");
    folders.getStyleClass().addAll("hc-case-line", "hc-page-top");
    brokenScroll.setId("broken-cases");
    brokenScroll.setMaxHeight(MOST_BROKEN_HEIGHT);
    brokenScroll.setMinHeight(0);
    brokenScroll.managedProperty().bind(brokenScroll.visibleProperty());
    broken.getStyleClass().add("hc-broken");
    Label said = Texts.aside("");
    said.textProperty().bind(model.saidProperty());
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    said.getStyleClass().add("hc-page-top");
    BorderPane pane = new BorderPane(list.table());
    pane.setTop(new VBox(folders, top));
    pane.setBottom(new VBox(said, brokenScroll, details));
    return pane;
  }

  private Node car() {
    carSays.setText("Choose a case under Jobs, then press All holds of this car.");
    carSays.getStyleClass().add("hc-page-top");
    holds.setVisible(false);
    BorderPane pane = new BorderPane(holds);
    pane.setTop(carSays);
    return pane;
  }

  private void show(CasesModel.Shown now) {
    empty.setVisible(now.notes().folders().isEmpty());
    folders.getChildren().setAll(new Label("Folders"));
    now.notes().folders().forEach(folder -> folders.getChildren().add(folder(folder)));
    folders.getChildren().add(button("Add a folder …", "add-folder", this::addFolder));
    List<BrokenCase> left = now.book().broken();
    brokenScroll.setVisible(!left.isEmpty());
    broken.setText(
        "Left out:\n"
            + left.stream()
                .map(one -> one.file() + ": " + one.reason())
                .collect(Collectors.joining("\n")));
    count();
    showChosen();
  }

  private void count() {
    int all = model.shownProperty().get().book().entries().size();
    int some = model.entries().size();
    counted.setText(some == all ? all + " jobs" : some + " of " + all + " jobs");
  }

  private Node folder(Path folder) {
    Label name = new Label(CasesModel.shown(folder));
    Button out = new Button("×");
    out.getStyleClass().add("hc-flat");
    out.setAccessibleText("Leave out the folder " + folder);
    out.setOnAction(event -> model.leaveOut(folder));
    HBox box = new HBox(name, out);
    box.getStyleClass().addAll("hc-timeline-hold", "hc-named");
    return box;
  }

  private void showChosen() {
    CasesModel.Shown now = model.shownProperty().get();
    details.show(list.chosen().orElse(null), now == null ? null : now.book());
  }

  private void showCar() {
    list.chosen().ifPresent(entry -> model.holdsOfCar(entry, tests -> showCar(entry, tests)));
  }

  private void showCar(CaseEntry entry, List<HoldTest> tests) {
    List<HoldTest> shown = tests.subList(Math.max(0, tests.size() - MOST_HOLDS), tests.size());
    holds.setVisible(!shown.isEmpty());
    carSays.setText(
        shown.isEmpty()
            ? entry.car() + ": no hold without clamps."
            : entry.car() + ": holds without clamps, oldest first.");
    if (!shown.isEmpty()) {
      double span = shown.stream().mapToDouble(test -> test.log().holdSpan()).max().orElse(1);
      HoldPlot.Wish wish =
          new HoldPlot.Wish(
              Optional.empty(), List.of(), span, false, desk.jobs().pressures().unit());
      holds.show(
          SeveralHolds.of(
              shown.stream().map(test -> (test.date() + " " + test.id()).strip()).toList(),
              shown.stream().map(test -> HoldPlot.of(test, wish)).toList()));
    }
    tabs.getSelectionModel().select(carTab);
  }

  private void addFolder() {
    desk.dialogs().chooseJobFolder().ifPresent(model::addFolder);
  }

  private void openRates() {
    desk.dialogs().choose(FileKind.RATES, null).ifPresent(model::use);
  }

  private void saveRates() {
    desk.dialogs().save(FileKind.RATES, null, "fault-rates.json").ifPresent(model::exportRates);
  }

  private void saveCases() {
    desk.dialogs().save(FileKind.CASES, null, "cases.csv").ifPresent(model::exportCases);
  }

  @Override
  public String title() {
    return "Cases";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public boolean needsJob() {
    return false;
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        Actions.of("Find a case", Actions.onShortcut(KeyCode.F), this::find),
        Actions.of("Look through the folders again", Actions.onShortcut(KeyCode.L), model::look),
        Actions.of("Jobs, fault rates or this car", Actions.onShortcut(KeyCode.T), this::turn));
  }

  @Override
  public List<KeyUse> keys() {
    return List.of(new KeyUse("Enter", "open the chosen job"));
  }

  private void find() {
    tabs.getSelectionModel().select(0);
    search.requestFocus();
  }

  private void turn() {
    int next = (tabs.getSelectionModel().getSelectedIndex() + 1) % tabs.getTabs().size();
    tabs.getSelectionModel().select(next);
  }

  @Override
  public void focus() {
    content.applyCss();
    if (empty.isVisible()) {
      empty.getChildren().get(2).requestFocus();
    } else {
      list.table().requestFocus();
    }
  }
}
