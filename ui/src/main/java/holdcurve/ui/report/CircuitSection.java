package holdcurve.ui.report;

import holdcurve.common.message.PressureUnit;
import holdcurve.common.text.Titles;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.record.job.Job;
import java.util.List;

/** The parts of the circuit, with what was stated of them. */
final class CircuitSection {
  /** Between the margins of a sheet that lies on its side [px]. */
  private static final double WIDTH = 1000;

  private CircuitSection() {}

  static Html html(Job job, List<String> places, PressureUnit unit) {
    return Html.all(
        Html.of(
            "div.wide",
            Html.of("h2", "Circuit"),
            Html.of("p", Titles.shown(job.circuit().title())),
            CircuitDrawing.of(job.circuit(), places, WIDTH, unit),
            Html.of(
                "p.small",
                "Jaws mark the hoses that a clamp can be set on."
                    + (places.isEmpty()
                        ? ""
                        : " A drop marks the likeliest place: "
                            + String.join(", ", places)
                            + "."))),
        Html.of("h2", "Parts"),
        Html.table(
            "parts",
            List.of("Part", "Kind", "Place", "Stated"),
            job.circuit().parts().stream().map(part -> row(part, unit)).toList()));
  }

  private static List<Html> row(Part part, PressureUnit unit) {
    String place = part.kind().ports() == Ports.TWO ? part.from() + " → " + part.to() : part.from();
    return List.of(
        Html.text(part.id()),
        Html.text(part.kind().title()),
        Html.text(place),
        Html.text(ReportFigures.stated(part, unit)));
  }
}
