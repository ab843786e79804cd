package holdcurve.ui.window.benchsheet;

import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Scrolled;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Where the sheet is typed: the bench above, a line for each injector below. */
final class SheetTablePane extends VBox {
  /** Share of the width that the number of the injector takes [%]. */
  private static final double NUMBER_SHARE = 6.5;

  /** What the headings need, in sizes of the text. */
  private static final double LETTERS = 37;

  private final BenchSheetModel model;
  private final GridPane grid = new GridPane();
  private final TitledPane folded;

  /**
   * Ways in and out of the table.
   *
   * @param open asks for a file and reads it
   * @param paste reads the clipboard
   * @param save asks for a name and writes the table
   * @param draw likewise, as a drawn page
   */
  record Ways(Runnable open, Runnable paste, Runnable save, Runnable draw) {}

  SheetTablePane(BenchSheetModel model, Ways ways) {
    this.model = model;
    getStyleClass().add("hc-sheet");
    grid.setId("bench-rows");
    grid.getStyleClass().addAll("hc-sheet-rows", "hc-narrow-cells");
    addColumn(NUMBER_SHARE);
    for (SheetColumn column : SheetColumn.values()) {
      addColumn(column.share());
    }
    model.rows().addListener((ListChangeListener<SheetRow>) change -> fill());
    fill();
    folded = folded(bench());
    ScrollPane scroll = Scrolled.downAround(grid);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(folded, scroll, buttons(ways));
  }

  /** Where text is large, rows go before settings, and columns keep the room of their headings. */
  void fitTo(int textSize) {
    folded.setExpanded(textSize <= Appearance.USUAL_SIZE);
    grid.setMinWidth(textSize * LETTERS);
  }

  private TitledPane folded(FlowPane settings) {
    TitledPane pane = new TitledPane("", settings);
    pane.setId("bench-settings");
    pane.getStyleClass().add("hc-section");
    pane.setAnimated(false);
    pane.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    model.pressureProperty().get()
                        + " "
                        + model.pressures().unit().symbol()
                        + " with "
                        + new FluidName().toString(model.fluidProperty().get())
                        + " at "
                        + model.celsiusProperty().get()
                        + " °C",
                model.pressureProperty(),
                model.pressures().unitProperty(),
                model.fluidProperty(),
                model.celsiusProperty()));
    return pane;
  }

  private void addColumn(double share) {
    ColumnConstraints column = new ColumnConstraints();
    column.setHgrow(Priority.ALWAYS);
    column.setHalignment(HPos.LEFT);
    column.setPercentWidth(share);
    grid.getColumnConstraints().add(column);
  }

  private FlowPane bench() {
    ComboBox<String> fluid = new ComboBox<>();
    fluid.getItems().setAll(Fluids.onBench().stream().map(Fluid::id).toList());
    fluid.setConverter(new FluidName());
    fluid.valueProperty().bindBidirectional(model.fluidProperty());
    FlowPane bench = new FlowPane();
    bench.getStyleClass().add("hc-sheet-bench");
    bench
        .getChildren()
        .addAll(
            pressure(),
            named("Fluid", fluid),
            named("at [°C]", field(model.celsiusProperty(), "temperature of the fluid, °C", 4)),
            named("Pulse [ms]", field(model.pulseProperty(), "pulse width, ms", 4)),
            named(
                "Drops in [min]",
                field(model.dropMinutesProperty(), "time of counting drops, minutes", 4)),
            named(
                "Serviced on",
                field(model.servicedProperty(), "day of the service, such as 2026-11-10", 9)));
    return bench;
  }

  private HBox pressure() {
    HBox box = named("", field(model.pressureProperty(), "pressure of the bench", 4));
    ((Label) box.getChildren().get(0))
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> "Bench [" + model.pressures().unit().symbol() + "]",
                model.pressures().unitProperty()));
    return box;
  }

  static HBox named(String name, Node control) {
    Label label = new Label(name);
    label.setMinWidth(USE_PREF_SIZE);
    label.setLabelFor(control);
    HBox box = new HBox(label, control);
    box.getStyleClass().add("hc-named");
    return box;
  }

  static TextField field(StringProperty text, String meaning, int columns) {
    TextField field = new TextField();
    field.setPrefColumnCount(columns);
    field.textProperty().bindBidirectional(text);
    field.setAccessibleText(meaning);
    return field;
  }

  /** Whether the keyboard is on something in a pane. */
  static boolean hasFocus(Parent pane) {
    Node owner = pane.getScene() == null ? null : pane.getScene().getFocusOwner();
    while (owner != null && owner != pane) {
      owner = owner.getParent();
    }
    return owner != null;
  }

  private void fill() {
    boolean hadFocus = hasFocus(grid);
    grid.getChildren().clear();
    grid.add(head("No.", ""), 0, 0);
    for (SheetColumn column : SheetColumn.values()) {
      grid.add(head("", column.below()), 1 + column.ordinal(), 0);
      if (!column.title().isEmpty()) {
        Label title = new Label(column.title());
        title.getStyleClass().add("hc-strong");
        GridPane.setValignment(title, VPos.TOP);
        grid.add(title, 1 + column.ordinal(), 0, column.span(), 1);
      }
    }
    int line = 1;
    for (SheetRow row : model.rows()) {
      grid.add(field(row.id(), "number of the injector", 3), 0, line);
      for (SheetColumn column : SheetColumn.values()) {
        String meaning = "injector " + row.id().get() + ", " + column.meaning();
        TextField cell = field(row.cell(column), meaning, 3);
        cell.setId(
            "bench-" + column.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + line);
        if (column.isSpray()) {
          hint(cell);
        }
        int at = line - 1;
        cell.setOnAction(event -> goOn(at, column.ordinal()));
        grid.add(cell, 1 + column.ordinal(), line);
      }
      line++;
    }
    if (hadFocus) {
      focusFirst();
    }
  }

  /** The words that can be typed, since the cell is narrow. */
  private void hint(TextField cell) {
    Tooltip hint = new Tooltip();
    List<String> grades = model.limits().sprayGrades();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < grades.size(); i++) {
      lines.add((i + 1) + " or " + grades.get(i));
    }
    hint.setText("Type " + String.join("\n", lines));
    cell.setTooltip(hint);
  }

  /** Names of fluids; the model holds their ids. */
  private static final class FluidName extends StringConverter<String> {
    @Override
    public String toString(String id) {
      return Fluids.onBench().stream()
          .filter(fluid -> fluid.id().equals(id))
          .map(Fluid::name)
          .findFirst()
          .orElse("");
    }

    @Override
    public String fromString(String name) {
      return Fluids.onBench().stream()
          .filter(fluid -> fluid.name().equals(name))
          .map(Fluid::id)
          .findFirst()
          .orElse(name);
    }
  }

  /** Enter goes down the column, then to the top of the next; what stands there is typed over. */
  private void goOn(int row, int column) {
    boolean last = row + 1 == model.rows().size();
    int next = last ? column + 1 : column;
    if (next < SheetColumn.values().length) {
      edit(grid, 1 + next, last ? 1 : row + 2);
    } else {
      edit(grid, 1 + column, row + 1);
    }
  }

  /** Puts the keyboard on a cell; typing replaces what stands there. */
  static void edit(GridPane grid, int column, int line) {
    grid.getChildren().stream()
        .filter(TextField.class::isInstance)
        .map(TextField.class::cast)
        .filter(f -> GridPane.getRowIndex(f) == line && GridPane.getColumnIndex(f) == column)
        .findFirst()
        .ifPresent(
            field -> {
              field.requestFocus();
              field.selectAll();
            });
  }

  static VBox head(String title, String unit) {
    Label name = new Label(title);
    name.getStyleClass().add("hc-strong");
    Label below = new Label(unit);
    below.getStyleClass().addAll("hc-muted", "hc-small");
    return new VBox(name, below);
  }

  private FlowPane buttons(Ways ways) {
    Button drops = button("Drops into the job", model::takeDrops);
    drops.getStyleClass().add("accent");
    CheckBox report = new CheckBox("Into the job's report");
    report.setId("bench-in-report");
    report.selectedProperty().bindBidirectional(model.inReportProperty());
    FlowPane buttons = new FlowPane();
    buttons.getStyleClass().add("hc-sheet-bench");
    buttons
        .getChildren()
        .addAll(
            button("Read a sheet …", ways.open()),
            button("Paste", ways.paste()),
            button("Another injector", model::addRow),
            button("Empty sheet", model::clear),
            button("Save …", ways.save()),
            button("Print …", ways.draw()),
            drops,
            report);
    return buttons;
  }

  static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }

  /** Puts the keyboard on the first cell to be filled in. */
  void focusFirst() {
    focus(0);
  }

  void focusLast() {
    focus(model.rows().size() - 1);
  }

  private void focus(int row) {
    grid.getChildren().stream()
        .filter(node -> node instanceof TextField)
        .filter(n -> GridPane.getRowIndex(n) == row + 1 && GridPane.getColumnIndex(n) == 1)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }
}
