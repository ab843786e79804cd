package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import java.util.Objects;

/**
 * Undo and redo where they can be seen: what was done on another page is turned to first, and only
 * a second press takes it back.
 */
final class Undoing {
  private final Desk desk;
  private final OpenJobModel model;

  Undoing(Desk desk) {
    this.desk = desk;
    this.model = desk.jobs();
  }

  void undo() {
    go(model.undoPage(), "undo", model.undoNameProperty().get(), model::undo);
  }

  void redo() {
    go(model.redoPage(), "redo", model.redoNameProperty().get(), model::redo);
  }

  private void go(String page, String verb, String what, Runnable step) {
    if (what.isEmpty()) {
      return;
    }
    if (page.isEmpty() || Objects.equals(page, desk.page().get())) {
      if (model.problemProperty().get().equals(said(verb, what))) {
        model.dismissProblem();
      }
      step.run();
    } else {
      desk.page().set(page);
      model.report(said(verb, what));
    }
  }

  private static String said(String verb, String what) {
    return "This was done here: " + what + ". Press again to " + verb + " it.";
  }
}
