package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.StatedEntry;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** The gauge that a job is read from. */
final class GaugeOptions {
  @Option(
      names = "--gauge-range",
      paramLabel = "P",
      converter = StatedPressure.Typed.class,
      description = "End of the gauge's scale (default: 4 bar).")
  private StatedPressure range;

  @Option(
      names = "--gauge-class",
      paramLabel = "PERCENT",
      description = "Its class, as printed on the dial (default: 1.6).")
  private Double accuracy;

  @Option(
      names = "--gauge-step",
      paramLabel = "P",
      converter = StatedPressure.Typed.class,
      description = "The step to which you read it (default: 0.02 bar).")
  private StatedPressure step;

  void state(StatedEntry job, PressureUnit unit) {
    Map<String, Double> gauge = new LinkedHashMap<>();
    StringBuilder written = new StringBuilder();
    if (range != null) {
      gauge.put("range_bar", range.bar(unit));
      written.append(" --gauge-range ").append(range.typed());
    }
    if (accuracy != null) {
      gauge.put("class_percent", accuracy);
      written.append(" --gauge-class ").append(accuracy);
    }
    if (step != null) {
      gauge.put("resolution_bar", step.bar(unit));
      written.append(" --gauge-step ").append(step.typed());
    }
    if (!gauge.isEmpty()) {
      job.put("gauge", "", written.toString().strip(), gauge);
    }
  }
}
