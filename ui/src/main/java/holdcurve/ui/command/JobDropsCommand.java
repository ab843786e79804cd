package holdcurve.ui.command;

import holdcurve.file.StatedEntry;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes how many drops fell from an injector. */
@Command(
    name = "drops",
    description = {
      "Notes how many drops fell from lifted injectors under pressure.",
      "  holdcurve job drops my-car.job.json 12 --number 4 --minutes 10",
      "  holdcurve job drops my-car.job.json 0 --part cold-start-injector --minutes 5"
    },
    mixinStandardHelpOptions = true)
final class JobDropsCommand implements Callable<Integer> {
  @Mixin private FindingArgument finding;

  @Parameters(index = "1", paramLabel = "DROPS", description = "How many fell; 0 for none.")
  private int drops;

  @Option(
      names = "--minutes",
      paramLabel = "MIN",
      required = true,
      description = "Over how many minutes they were counted.")
  private double minutes;

  @Option(
      names = "--number",
      paramLabel = "N",
      description = "Which injector (without it: all were counted together).")
  private Integer number;

  @Option(
      names = "--part",
      paramLabel = "PART",
      description = "The injectors, or the cold-start injector (default: the injectors).")
  private String part;

  @Mixin private MomentOptions when;

  @Override
  public Integer call() {
    return finding.add(
        (circuit, unit) -> {
          StatedEntry count =
              new StatedEntry()
                  .put("kind", "", "drops")
                  .put("part", "--part", part == null ? injectors(circuit) : part(circuit))
                  .put("number", "--number", number)
                  .put("drops", "", drops)
                  .put("minutes", "--minutes", minutes);
          when.state(count, unit);
          return count;
        });
  }

  private String part(Circuit circuit) {
    return JobArgument.id(circuit, part);
  }

  /** Where there is but one set of them; else the reader asks which. */
  private static String injectors(Circuit circuit) {
    List<Part> sets = circuit.partsOf(Injector.KIND);
    return sets.size() == 1 ? sets.get(0).id() : null;
  }
}
