package holdcurve.ui.window.frame;

import holdcurve.record.job.Job;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import javafx.geometry.Pos;
import javafx.scene.control.TextField;

/** The title of the open job, which can be typed over. */
final class JobTitle extends TextField {
  private final OpenJobModel model;

  JobTitle(OpenJobModel model) {
    this.model = model;
    setId("job-title");
    getStyleClass().add("hc-job-title");
    setAlignment(Pos.CENTER_RIGHT);
    setAccessibleText("Title of the job");
    visibleProperty().bind(model.jobProperty().isNotNull());
    model.jobProperty().addListener((property, before, now) -> show(now));
    setOnAction(event -> commit());
    focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                commit();
              }
            });
  }

  private void show(Job job) {
    setText(job == null ? "" : job.title());
  }

  private void commit() {
    String title = getText() == null ? "" : getText().strip();
    if (title.isEmpty()) {
      show(model.jobProperty().get());
    } else {
      model.changeAnywhere("title", job -> JobEdits.titled(job, title));
    }
  }
}
