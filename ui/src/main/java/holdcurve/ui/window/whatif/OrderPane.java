package holdcurve.ui.window.whatif;

import holdcurve.advice.plan.CostPlan;
import holdcurve.ui.offer.OrderWords;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.job.PressureFormat;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The order of tests and repairs that costs least. */
final class OrderPane extends VBox {
  /** How far in a step stands for each step before it, in widths of a letter. */
  private static final double INDENT = 1.4;

  private final PartsModel model;
  private final PressureFormat pressures;
  private final VBox lines = new VBox();

  OrderPane(PartsModel model, PressureFormat pressures) {
    this.model = model;
    this.pressures = pressures;
    getStyleClass().add("hc-order");
    lines.setId("cheapest-order");
    lines.getStyleClass().add("hc-changes");
    Button work = new Button("Work out the cheapest order (F7)");
    work.setId("order");
    work.getStyleClass().add("accent");
    work.setOnAction(event -> model.order());
    ScrollPane scroll = Scrolled.down(lines);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(Texts.heading("In which order"), work, scroll);
    model.orderProperty().addListener((property, before, now) -> show(now));
    pressures
        .unitProperty()
        .addListener((property, before, now) -> show(model.orderProperty().get()));
    show(model.orderProperty().get());
  }

  private void show(CostPlan order) {
    lines.getChildren().clear();
    if (order == null) {
      lines
          .getChildren()
          .add(
              Texts.words(
                  "Which test or repair to do first, so that time and money spent come out least on"
                      + " average. It takes prices as they stand on the left.",
                  "hc-muted"));
      return;
    }
    lines.getChildren().add(Texts.words(OrderWords.summary(order), "hc-strong"));
    OrderWords.lines(order, pressures.unit()).forEach(line -> lines.getChildren().add(line(line)));
    order.assumptions().forEach(note -> lines.getChildren().add(Texts.aside(note)));
  }

  private static Label line(OrderWords.Line line) {
    String head = line.head().isEmpty() ? "" : line.head() + ": ";
    Label label = Texts.words(head + line.text());
    double letter = label.getFont().getSize();
    label.setPadding(new Insets(0, 0, 0, INDENT * letter * line.depth()));
    return label;
  }
}
