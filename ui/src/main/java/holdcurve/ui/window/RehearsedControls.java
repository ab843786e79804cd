package holdcurve.ui.window;

import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.PlotPanel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/**
 * The controls that take longest at first, each alone. What they cost then is classes to load and
 * code that nobody has compiled yet, so tables and plots grow from nearly nothing.
 */
final class RehearsedControls {
  /** About the height of a line of a table [px]. */
  private static final double ROW = 40;

  private RehearsedControls() {}

  /**
   * @param plots in the order in which they are shown, simple ones first
   */
  static List<Supplier<Node>> all(List<HoldPlot> plots) {
    List<Supplier<Node>> all = new ArrayList<>(plain());
    plots.forEach(plot -> all.add(() -> shown(plot)));
    return all;
  }

  private static List<Supplier<Node>> plain() {
    return List.of(
        () -> new Label("x"),
        () -> new TextField("1.85"),
        ScrollBar::new,
        () -> new ScrollPane(new CheckBox("x")),
        () -> low(new ListView<String>(), 1),
        ListCell<String>::new,
        () -> low(new ListView<>(FXCollections.observableArrayList("x")), 1),
        TableRow<String>::new,
        () -> low(new TableView<>(), 0),
        () -> table(1, 0),
        TableCell<String, String>::new,
        () -> table(1, 1),
        () -> table(1, 1),
        () -> table(1, 2),
        () -> table(1, 3),
        () -> table(2, 2),
        () -> table(2, 3),
        () -> table(2, 4),
        () -> table(3, 3),
        () -> table(3, 4),
        () -> table(3, 6),
        () -> table(3, 8),
        () -> new TitledPane("x", new ToggleButton("x")),
        () -> new TabPane(new Tab("x")),
        () -> new Slider(0, 1, 0.5),
        () -> new ComboBox<String>(),
        TextArea::new,
        RehearsedControls::fields,
        RehearsedControls::fields,
        RehearsedControls::fields,
        RehearsedControls::fields,
        RehearsedControls::fields,
        HoldChart::new,
        () -> new PlotPanel(new SimpleBooleanProperty()));
  }

  /** As high as it takes: in more height it would make cells for the rows that it hasn't got. */
  private static Region low(Region list, int rows) {
    list.setMaxHeight(ROW * (rows + 1));
    return list;
  }

  private static Region table(int columns, int rows) {
    TableView<String> table = new TableView<>();
    for (int column = 0; column < columns; column++) {
      TableColumn<String, String> words = new TableColumn<>("x");
      words.setCellValueFactory(cell -> new ReadOnlyStringWrapper(cell.getValue()));
      table.getColumns().add(words);
    }
    table.getItems().addAll(Collections.nCopies(rows, "x"));
    return low(table, rows);
  }

  private static FlowPane fields() {
    FlowPane fields = new FlowPane();
    IntStream.range(0, 12).forEach(i -> fields.getChildren().add(new TextField("1.85")));
    return fields;
  }

  private static PlotPanel shown(HoldPlot plot) {
    PlotPanel panel = new PlotPanel(new SimpleBooleanProperty());
    panel.show(plot, "");
    return panel;
  }
}
