package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Lets files be dropped on the window. */
final class JobDrop {
  private static final String HERE = "hc-drop-here";

  private JobDrop() {}

  static void accept(Node target, OpenJobModel model) {
    target.setOnDragOver(JobDrop::over);
    target.setOnDragEntered(
        event -> {
          if (event.getDragboard().hasFiles()) {
            target.getStyleClass().add(HERE);
          }
        });
    target.setOnDragExited(event -> target.getStyleClass().remove(HERE));
    target.setOnDragDropped(event -> dropped(event, model));
  }

  private static void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY_OR_MOVE);
    }
    event.consume();
  }

  private static void dropped(DragEvent event, OpenJobModel model) {
    List<Path> paths = event.getDragboard().getFiles().stream().map(File::toPath).toList();
    model.openDropped(paths);
    event.setDropCompleted(true);
    event.consume();
  }
}
