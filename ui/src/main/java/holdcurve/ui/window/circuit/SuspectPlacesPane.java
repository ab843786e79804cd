package holdcurve.ui.window.circuit;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.shape.Rectangle;

/** The circuit tinted by where the fault is likely to be, with the chance written at the part. */
public final class SuspectPlacesPane extends CircuitPaper {
  private final SuspectPlacesModel model;

  public SuspectPlacesPane(SuspectPlacesModel model) {
    super(legend());
    this.model = model;
    setId("suspect-places");
    setMinSize(0, 0);
    model.placesProperty().addListener((property, before, now) -> draw());
    model.pressures().unitProperty().addListener((property, before, now) -> draw());
    draw();
  }

  private static Label legend() {
    HBox steps = new HBox(3);
    for (double chance : new double[] {0.05, 0.3, 0.6, 0.95}) {
      Rectangle step = new Rectangle(16, 13);
      step.getStyleClass().add("hc-tint");
      step.setOpacity(PartNode.tint(chance));
      steps.getChildren().add(step);
    }
    Label legend = new Label("Chance that the fault is here", steps);
    legend.setGraphicTextGap(8);
    return legend;
  }

  private void draw() {
    SuspectPlacesModel.Places places = model.placesProperty().get();
    draw(places == null ? null : places.drawing(), model.pressures());
    if (places != null) {
      for (PartNode node : nodes()) {
        node.setFocusTraversable(false);
        node.tinted(places.chances().getOrDefault(node.part(), 0.0));
      }
    }
  }
}
