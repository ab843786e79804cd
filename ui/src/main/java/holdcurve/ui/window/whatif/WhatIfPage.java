package holdcurve.ui.window.whatif;

import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Changes tried, before and after side by side. */
public final class WhatIfPage implements Page {
  /** Share of the width that the changes take, within their own limits [-]. */
  private static final double CHANGES_SHARE = 0.3;

  private final WhatIfModel model;
  private final BorderPane content = new BorderPane();
  private final HoldChart before = new HoldChart();
  private final HoldChart after = new HoldChart();
  private final ChangePanel changes;
  private final ComparisonTable table;
  private final Label tried = new Label();

  public WhatIfPage(WhatIfModel model) {
    this.model = model;
    changes = new ChangePanel(model);
    table = new ComparisonTable(model.jobs().pressures());
    changes.prefWidthProperty().bind(content.widthProperty().multiply(CHANGES_SHARE));
    tried.setWrapText(true);
    tried.setMinHeight(Label.USE_PREF_SIZE);
    tried.getStyleClass().add("hc-tried");
    HBox plots = new HBox(plot("Before, with what was read", before), plot("After", after));
    plots.getStyleClass().add("hc-pair");
    VBox.setVgrow(plots, Priority.ALWAYS);
    VBox middle = new VBox(tried, plots, table);
    middle.setMinWidth(0);
    content.setCenter(middle);
    content.setRight(changes);
    model.holdsProperty().addListener((property, was, now) -> show());
    model.figuresProperty().addListener((property, was, now) -> show());
    model.jobs().pressures().unitProperty().addListener((property, was, now) -> show());
    show();
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  private static Node plot(String title, HoldChart chart) {
    Label words = new Label(title);
    words.getStyleClass().add("hc-strong");
    VBox box = new VBox(words, chart);
    box.getStyleClass().add("hc-plot-panel");
    VBox.setVgrow(chart, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    chart.setMinHeight(0);
    box.setMinWidth(0);
    box.setPrefWidth(300);
    return box;
  }

  private void show() {
    table.show(model.holdsProperty().get(), model.figuresProperty().get());
    if (model.holdsProperty().get() == null) {
      tried.setText("Working out what could be changed …");
      return;
    }
    List<String> what = model.tried().what();
    tried.setText(
        what.isEmpty()
            ? "Tick a repair or move a slider: the right-hand plot and the figures follow."
            : "Tried: " + String.join("; ", what.stream().map(WhatIfPage::lower).toList()) + ".");
    HoldPlot left = model.beforePlot();
    before.show(left);
    after.show(model.afterPlot());
  }

  @Override
  public String title() {
    return "What if";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<MenuItem> actions() {
    MenuItem back = new MenuItem("Back to as it is");
    back.setAccelerator(new KeyCodeCombination(KeyCode.BACK_SPACE, KeyCombination.SHORTCUT_DOWN));
    back.setOnAction(event -> model.reset());
    return List.of(back);
  }

  @Override
  public void focus() {
    changes.focusFirst();
  }
}
