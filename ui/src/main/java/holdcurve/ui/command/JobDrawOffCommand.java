package holdcurve.ui.command;

import holdcurve.file.StatedEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes how much fuel was drawn off, and what the gauge did. */
@Command(
    name = "draw-off",
    description = {
      "Notes how much fuel was drawn off at the gauge tee, and what the gauge did.",
      "  holdcurve job draw-off my-car.job.json --drawn 12 --from 2bar --to 1.5bar"
    },
    mixinStandardHelpOptions = true)
final class JobDrawOffCommand implements Callable<Integer> {
  @Mixin private FindingArgument finding;

  @Option(
      names = "--drawn",
      paramLabel = "ML",
      required = true,
      description = "How many millilitres were drawn off.")
  private double drawn;

  @Option(
      names = "--from",
      paramLabel = "P",
      required = true,
      converter = StatedPressure.Typed.class,
      description = "The gauge before.")
  private StatedPressure from;

  @Option(
      names = "--to",
      paramLabel = "P",
      required = true,
      converter = StatedPressure.Typed.class,
      description = "The gauge after.")
  private StatedPressure to;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "How long it took (default: about 10).")
  private Double seconds;

  @Option(
      names = "--clamp",
      paramLabel = "HOSE",
      description = "This hose was clamped; again for another.")
  private List<String> clamped = new ArrayList<>();

  @Option(names = "--date", paramLabel = "DATE", description = "When, as 2026-04-11.")
  private String date;

  @Override
  public Integer call() {
    return finding.add(
        (circuit, unit) ->
            new StatedEntry()
                .put("kind", "", "draw-off")
                .put("drawn_mL", "--drawn", drawn)
                .put("from_bar", "--from", from.typed(), from.bar(unit))
                .put("to_bar", "--to", to.typed(), to.bar(unit))
                .put("seconds", "--seconds", seconds)
                .put(
                    "clamped",
                    "--clamp",
                    String.join(" --clamp ", clamped),
                    clamped.isEmpty() ? null : JobArgument.ids(circuit, clamped))
                .put("date", "--date", date));
  }
}
