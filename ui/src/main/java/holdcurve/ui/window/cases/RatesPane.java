package holdcurve.ui.window.cases;

import holdcurve.casebook.LearnedRates;
import holdcurve.casebook.RatesInUse;
import holdcurve.ui.window.frame.Texts;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How common each fault is: shipped, by the garage's own cases, and as rankings use it. */
final class RatesPane extends VBox {
  private final CasesModel model;
  private final TableView<LearnedRates.Rate> table = new TableView<>();
  private final RadioButton shipped = choice("The shipped rates", "rates-shipped");
  private final RadioButton own = choice("Your own rates", "rates-own");
  private final RadioButton file = choice("Rates from a file …", "rates-file");
  private final Label rest = Texts.aside("");
  private Map<String, Double> used = Map.of();

  /**
   * @param open asks for a file of rates
   * @param save asks where to write the garage's own
   */
  RatesPane(CasesModel model, Runnable open, Runnable save) {
    this.model = model;
    getStyleClass().add("hc-rates");
    ToggleGroup group = new ToggleGroup();
    group.getToggles().addAll(shipped, own, file);
    shipped.setOnAction(event -> model.use(RatesInUse.SHIPPED));
    own.setOnAction(event -> model.use(RatesInUse.OWN));
    file.setOnAction(
        event -> {
          open.run();
          show();
        });
    Label use = new Label("Rankings start from");
    use.getStyleClass().add("hc-strong");
    Button export = new Button("Export yours …");
    export.setId("export-rates");
    export.setOnAction(event -> save.run());
    FlowPane choices = new FlowPane(use, shipped, own, file, export);
    choices.getStyleClass().add("hc-case-line");
    table.setId("rates");
    table.getStyleClass().add("hc-cases");
    table.setAccessibleText("Fault rates");
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    table.setPlaceholder(new Label("Reading the rates …"));
    column("Fault", LearnedRates.Rate::name, 420);
    column("Shipped", rate -> percent(rate.shipped()), 110);
    column("Yours", rate -> percent(rate.learned()), 110);
    column("Used", rate -> percent(used.getOrDefault(rate.fault(), rate.shipped())), 110);
    column("Cases", rate -> Integer.toString(rate.cases()), 90);
    VBox.setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(choices, rest, table);
    model.shownProperty().addListener((property, before, now) -> show());
  }

  private static RadioButton choice(String text, String id) {
    RadioButton choice = new RadioButton(text);
    choice.setId(id);
    choice.setMinWidth(USE_PREF_SIZE);
    return choice;
  }

  private void column(String title, Function<LearnedRates.Rate, String> words, double width) {
    TableColumn<LearnedRates.Rate, String> column = new TableColumn<>(title);
    column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())));
    column.setPrefWidth(width);
    if (!title.equals("Fault")) {
      column.getStyleClass().add("hc-number");
    }
    column.setSortable(false);
    column.setReorderable(false);
    table.getColumns().add(column);
  }

  private static String percent(double rate) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * rate);
  }

  private void show() {
    CasesModel.Shown now = model.shownProperty().get();
    used = now.used();
    table.getItems().setAll(now.rates().rates());
    int cases = now.rates().cases();
    rest.setText(
        "Per cent of circuits that have the fault. Yours rest on "
            + (cases == 1 ? "1 confirmed case." : cases + " confirmed cases.")
            + now.notes().rates().file().map(from -> " From " + from + ".").orElse(""));
    switch (now.notes().rates().kind()) {
      case SHIPPED -> shipped.setSelected(true);
      case OWN -> own.setSelected(true);
      case FILE -> file.setSelected(true);
    }
  }
}
