package holdcurve.ui.window.suspects;

import holdcurve.common.message.Message;
import holdcurve.inference.ranking.RateShift;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The ranking: what is listed, the list, and whether the unlikely are listed too. */
final class RankingPanel extends VBox {
  private final SuspectsModel model;
  private final SuspectList list;

  RankingPanel(SuspectsModel model) {
    this.model = model;
    this.list = new SuspectList(model);
    getStyleClass().add("hc-ranking");
    setMinWidth(380);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(heading(), list, unlikely());
  }

  private VBox heading() {
    Label title = SuspectLine.words("Suspects", "hc-heading");
    Label legend = SuspectLine.words("", "hc-muted", "hc-small");
    legend
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                this::legend, model.ranking(), model.busy(), model.unit(), model.job()));
    Label rates = SuspectLine.words("", "hc-small");
    rates.setId("own-rates");
    rates
        .textProperty()
        .bind(Bindings.createStringBinding(this::rates, model.ranking(), model.unit()));
    rates.managedProperty().bind(rates.textProperty().isNotEmpty());
    VBox heading = new VBox(title, legend, rates);
    heading.getStyleClass().add("hc-ranking-head");
    return heading;
  }

  /** What fault rates of the garage's own did to the answer. */
  private String rates() {
    return Optional.ofNullable(model.ranking().getValue())
        .flatMap(RateShift::of)
        .map(note -> note.in(model.unit().getValue()))
        .orElse("");
  }

  private String legend() {
    if (model.ranking().getValue() != null) {
      Message legend =
          Message.of(
              "Probability; leak at %s with its 90 %% range",
              Message.round(model.ranking().getValue().testPressure()));
      return legend.in(model.unit().getValue());
    }
    return model.busy().getValue() ? "Working out what explains the fall …" : model.notRanked();
  }

  private CheckBox unlikely() {
    CheckBox box = new CheckBox();
    box.setId("show-unlikely");
    box.textProperty().bind(model.unlikelyProperty().asString("Show %d more, below 1 %%"));
    box.visibleProperty().bind(model.unlikelyProperty().greaterThan(0));
    box.managedProperty().bind(box.visibleProperty());
    box.selectedProperty().bindBidirectional(model.showUnlikelyProperty());
    return box;
  }

  void focusList() {
    list.focusChosen();
  }
}
