package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.ui.window.frame.Sign;
import javafx.scene.layout.StackPane;

/** The most important of what the sheet says. */
final class SheetVerdict extends StackPane {
  private final VerdictStrip strip = new VerdictStrip("bench-verdict");

  SheetVerdict(BenchSheetModel model) {
    getChildren().add(strip);
    model.reportProperty().addListener((property, before, now) -> show(model));
    model.troubleProperty().addListener((property, before, now) -> show(model));
    show(model);
  }

  private void show(BenchSheetModel model) {
    BenchReport report = model.reportProperty().get();
    String trouble = model.troubleProperty().get();
    if (!trouble.isEmpty()) {
      strip.show("leak", Sign.WARNING, "Can't be read", trouble);
    } else if (report == null) {
      strip.show(
          "open",
          Sign.QUESTION,
          "No sheet yet",
          "Type what the bench showed, read a sheet (Ctrl+B), or paste one (Ctrl+Shift+V).");
    } else {
      SheetHeadline headline = SheetHeadline.of(report.headline().kind());
      strip.show(
          headline.style(),
          headline.sign(),
          report.headline().kind().word(),
          String.join(" ", model.pressures().texts(report.headline().said())));
    }
  }
}
