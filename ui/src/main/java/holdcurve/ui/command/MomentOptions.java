package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.StatedEntry;
import picocli.CommandLine.Option;

/** When something was seen. */
final class MomentOptions {
  @Option(
      names = "--test",
      paramLabel = "NAME",
      description = "The hold test during which it was seen.")
  private String test;

  @Option(
      names = "--pressure",
      paramLabel = "P",
      converter = StatedPressure.Typed.class,
      description = "The gauge meanwhile (default: just primed, or that of the test).")
  private StatedPressure pressure;

  @Option(names = "--date", paramLabel = "DATE", description = "When, as 2026-04-11.")
  private String date;

  void state(StatedEntry finding, PressureUnit unit) {
    finding.put("test", "--test", test).put("date", "--date", date);
    if (pressure != null) {
      finding.put("pressure_bar", "--pressure", pressure.typed(), pressure.bar(unit));
    }
  }
}
