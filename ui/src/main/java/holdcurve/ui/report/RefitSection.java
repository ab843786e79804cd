package holdcurve.ui.report;

import holdcurve.record.job.Upkeep;
import holdcurve.record.refit.RefitStep;
import java.util.List;

/** The steps of the refit, ticked or with a box to tick. */
final class RefitSection {
  private RefitSection() {}

  static Html html(Upkeep upkeep, Html cautions) {
    return Html.all(
        Html.of(
            "div.together", Html.of("h2", "Refit, from the bench to the first pressure"), cautions),
        Html.table(
            "refit",
            List.of("", "Caution", "Step", "Done, by"),
            upkeep.refit().steps().stream().map(RefitSection::row).toList()));
  }

  private static List<Html> row(RefitStep step) {
    return List.of(
        step.isDone() ? Html.of("div.box", "×") : Html.of("div.box", new Html("&#160;")),
        Html.text(step.caution()),
        Html.text(step.text()),
        Html.text(step.tick().map(tick -> tick.date() + " " + tick.by()).orElse("")));
  }
}
