package holdcurve.ui.window.benchsheet;

import holdcurve.bench.droptest.DropReport;
import holdcurve.ui.window.frame.Sign;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A drop-per-pulse test: typed on the left, judged on the right. */
final class DropTestPane extends BorderPane {
  /** Share of the width that the table takes [-]. */
  private static final double TABLE_SHARE = 0.42;

  private final DropTestModel model;
  private final DropTablePane table;
  private final VerdictStrip verdict = new VerdictStrip("drop-verdict");
  private final DeparturesView view;

  /**
   * @param open asks for a file and reads it
   * @param paste reads the clipboard
   */
  DropTestPane(DropTestModel model, Runnable open, Runnable paste) {
    this.model = model;
    table = new DropTablePane(model, open, paste);
    table.prefWidthProperty().bind(widthProperty().multiply(TABLE_SHARE));
    table.setMinWidth(0);
    view = new DeparturesView(model.limits(), "drop-bars");
    view.setMinWidth(0);
    view.setPrefWidth(0);
    HBox.setHgrow(view, Priority.ALWAYS);
    setTop(verdict);
    setCenter(new HBox(table, view));
    model.reportProperty().addListener((property, before, now) -> show());
    model.troubleProperty().addListener((property, before, now) -> show());
    model.pressures().unitProperty().addListener((property, before, now) -> show());
    show();
  }

  private void show() {
    DropReport report = model.reportProperty().get();
    String trouble = model.troubleProperty().get();
    if (!trouble.isEmpty()) {
      verdict.show("leak", Sign.WARNING, "Can't be read", trouble);
    } else if (report == null) {
      verdict.show(
          "open",
          Sign.QUESTION,
          "No test yet",
          "Type the gauge before and after each firing, or read a test (Ctrl+B).");
    } else {
      judge(report);
    }
    if (report == null) {
      view.showNothing(
          "Here each injector gets a bar: how much it passes against the middle one, and how many"
              + " more firings would settle it.");
    } else {
      view.show(
          "What each passes, against the middle one (90 % range)",
          report.injectors().stream().map(DepartureLine::of).toList(),
          model.pressures().texts(report.verdict().subList(1, report.verdict().size())),
          model.pressures().texts(report.notes()));
    }
  }

  private void judge(DropReport report) {
    SheetHeadline headline = SheetHeadline.of(report.headline());
    verdict.show(
        headline.style(),
        headline.sign(),
        report.headline().word(),
        report.verdict().get(0).in(model.pressures().unit()));
  }

  void focusFirst() {
    table.focusFirst();
  }
}
