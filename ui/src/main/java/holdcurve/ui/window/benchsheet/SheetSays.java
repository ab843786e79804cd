package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import java.util.Locale;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the sheet says. */
final class SheetSays extends VBox {
  private final BenchSheetModel model;
  private final DeparturesView view;

  SheetSays(BenchSheetModel model) {
    this.model = model;
    view = new DeparturesView(model.limits(), "bench-bars");
    setVgrow(view, Priority.ALWAYS);
    getChildren().addAll(view, Texts.caution(StepCautions.BENCH));
    model.reportProperty().addListener((property, before, now) -> show(now));
    model.pressures().unitProperty().addListener((property, before, now) -> show(report()));
    show(report());
  }

  private BenchReport report() {
    return model.reportProperty().get();
  }

  private void show(BenchReport report) {
    if (report == null) {
      view.showNothing(
          "Here each injector gets a bar: how far its flow lies from the middle of the set, and"
              + " whether that is worth a service.");
    } else {
      view.show(
          heading(report),
          report.injectors().stream().map(i -> DepartureLine.of(i, model.limits())).toList(),
          model.pressures().texts(report.more()),
          model.pressures().texts(report.notes()));
    }
  }

  private String heading(BenchReport report) {
    return String.format(
        Locale.ROOT,
        "Flow %s service against the middle of the set, at %s with %s%s",
        report.latest().word(),
        model.pressures().text(report.point().pressure()),
        report.point().fluid().name(),
        report
            .set(report.latest())
            .map(
                set -> String.format(Locale.ROOT, ": mean %.0f mL/min", set.mean().middle() * 60e6))
            .orElse(""));
  }
}
