package holdcurve.ui.window.whatif;

import holdcurve.common.number.Chance;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The parts list: what each repair does for the hold, and what it costs the user. */
final class PartsTable extends VBox {
  private static final double MOST_MONEY = 1e6;
  private static final double MOST_MINUTES = 6000;

  private final PartsModel model;
  private final GridPane grid = new GridPane();

  /**
   * @param open asks for a price list and reads it
   * @param save asks where to keep the prices
   */
  PartsTable(PartsModel model, Runnable open, Runnable save) {
    this.model = model;
    getStyleClass().add("hc-parts");
    grid.setId("parts");
    grid.getStyleClass().add("hc-parts-rows");
    grid.getColumnConstraints().addAll(wide(), right(), right(), right());
    ScrollPane scroll = Scrolled.downAround(grid);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Texts.heading("What could be ordered or done"),
            Texts.aside(
                "Chance that the hold passes after each alone. Type your prices, or open a list."),
            money(),
            scroll,
            buttons(open, save));
    model.remedies().addListener((ListChangeListener<Remedy>) change -> fill());
    model.unrepairedProperty().addListener((property, before, now) -> fill());
    fill();
  }

  private static ColumnConstraints wide() {
    ColumnConstraints column = new ColumnConstraints();
    column.setHgrow(Priority.ALWAYS);
    return column;
  }

  private static ColumnConstraints right() {
    ColumnConstraints column = new ColumnConstraints();
    column.setHalignment(HPos.RIGHT);
    column.setMinWidth(USE_PREF_SIZE);
    return column;
  }

  private FlowPane money() {
    TextField currency = new TextField();
    currency.setId("currency");
    currency.setPrefColumnCount(5);
    currency.textProperty().bindBidirectional(model.currencyProperty());
    NumberField hour =
        new NumberField(model.perHourProperty(), MOST_MONEY, "what an hour of work counts", 5);
    hour.setId("per-hour");
    FlowPane money = new FlowPane(named("Currency", currency), named("An hour of work", hour));
    money.getStyleClass().add("hc-parts-money");
    return money;
  }

  private static HBox named(String name, TextField field) {
    Label label = new Label(name);
    label.setMinWidth(USE_PREF_SIZE);
    label.setLabelFor(field);
    HBox box = new HBox(label, field);
    box.getStyleClass().add("hc-named");
    return box;
  }

  private FlowPane buttons(Runnable open, Runnable save) {
    FlowPane buttons =
        new FlowPane(button("Open a price list …", open), button("Save the prices …", save));
    buttons.getStyleClass().add("hc-buttons");
    return buttons;
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setOnAction(event -> what.run());
    return button;
  }

  private void fill() {
    grid.getChildren().clear();
    if (model.remedies().isEmpty()) {
      grid.add(
          Texts.words(
              "Nothing is suspected, or the job is not ranked yet (F5). A price list can be opened"
                  + " all the same.",
              "hc-muted"),
          0,
          0);
      return;
    }
    String[] heads = {"Repair", "Passes then", "Price", "Minutes"};
    for (int i = 0; i < heads.length; i++) {
      Label head = new Label(heads[i]);
      head.setMinWidth(USE_PREF_SIZE);
      head.getStyleClass().addAll("hc-muted", "hc-small");
      grid.add(head, i, 0);
    }
    grid.add(new Label("nothing"), 0, 1);
    grid.add(strong(Chance.words(model.unrepairedProperty().get())), 1, 1);
    int row = 2;
    for (Remedy remedy : model.remedies()) {
      add(remedy, row++);
    }
  }

  private void add(Remedy remedy, int row) {
    String name = remedy.offer().name();
    CheckBox tried = new CheckBox(name);
    tried.setWrapText(true);
    tried.setMinHeight(USE_PREF_SIZE);
    tried.selectedProperty().bindBidirectional(remedy.triedProperty());
    NumberField price = new NumberField(remedy.priceProperty(), MOST_MONEY, "price of: " + name, 5);
    price.setId("price-" + (row - 1));
    NumberField minutes =
        new NumberField(remedy.minutesProperty(), MOST_MINUTES, "minutes for: " + name, 4);
    grid.addRow(row, tried, strong(Chance.words(remedy.chance())), price, minutes);
  }

  private static Label strong(String text) {
    Label label = new Label(text);
    label.setMinWidth(USE_PREF_SIZE);
    label.getStyleClass().add("hc-strong");
    return label;
  }

  /** Puts the keyboard on the first price. */
  void focusFirst() {
    List.copyOf(grid.getChildren()).stream()
        .filter(NumberField.class::isInstance)
        .findFirst()
        .ifPresent(javafx.scene.Node::requestFocus);
  }
}
