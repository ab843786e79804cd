package holdcurve.ui.window.holdtests;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.Duration;

/** How it goes with the file that is followed, and the button that ends it. */
final class FollowStrip extends HBox {
  /** Loggers write a line a second at most: common practice, no source. */
  private static final Duration LOOK = Duration.seconds(1);

  private final Timeline looking;

  FollowStrip(FollowModel model) {
    getStyleClass().addAll("hc-page-top", "hc-compact");
    setId("follow");
    Label said = new Label();
    said.setId("follow-said");
    said.setWrapText(true);
    said.setMinHeight(USE_PREF_SIZE);
    said.setMaxWidth(Double.MAX_VALUE);
    said.textProperty().bind(model.saidProperty());
    HBox.setHgrow(said, Priority.ALWAYS);
    Button stop = new Button("Stop following");
    stop.setId("follow-stop");
    stop.setMinWidth(USE_PREF_SIZE);
    stop.setOnAction(event -> model.stop());
    getChildren().addAll(said, stop);
    visibleProperty().bind(model.followingProperty());
    managedProperty().bind(visibleProperty());
    looking = new Timeline(new KeyFrame(LOOK, event -> model.look()));
    looking.setCycleCount(Animation.INDEFINITE);
    model
        .followingProperty()
        .addListener(
            (property, before, now) -> {
              if (now) {
                looking.play();
              } else {
                looking.stop();
              }
            });
  }
}
