package holdcurve.ui.command;

import holdcurve.advice.whatif.PriceList;
import holdcurve.fault.LeakFault;
import holdcurve.file.JobReader;
import holdcurve.file.PriceFile;
import holdcurve.file.StatedEntry;
import holdcurve.physics.circuit.Circuit;
import holdcurve.ui.offer.Money;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets the price of a repair. */
@Command(
    name = "price",
    description = {
      "Sets the price of a repair in a list of prices, which 'whatif --parts' reads.",
      "  holdcurve job price my-car.job.json prices.json \"new check valve\" --price 45 \\",
      "      --minutes 45 --part check-valve"
    },
    mixinStandardHelpOptions = true)
final class JobPriceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "The job (*.job.json), for the names of its parts.")
  private Path job;

  @Parameters(
      index = "1",
      paramLabel = "PRICES",
      description = "The list (*.json); begun if there is none.")
  private Path list;

  @Parameters(
      index = "2",
      paramLabel = "NAME",
      description = "What you call the repair; one of this name is changed.")
  private String name;

  @Option(
      names = "--price",
      paramLabel = "PRICE",
      required = true,
      description = "Price of the material; 0 if it costs nothing.")
  private double price;

  @Option(names = "--minutes", paramLabel = "MIN", description = "Minutes of work (default: none).")
  private Double minutes;

  @Option(names = "--part", paramLabel = "PART", description = "The part that is renewed.")
  private String part;

  @Option(
      names = "--cures",
      paramLabel = "FAULT",
      description = "A fault it puts right, as 'faults' lists it; again for another.")
  private List<String> cures = new ArrayList<>();

  @Option(
      names = "--currency",
      paramLabel = "NAME",
      description = "Sign or name of the currency of the whole list.")
  private String currency;

  @Option(
      names = "--per-hour",
      paramLabel = "PRICE",
      description = "What an hour of work counts, for the whole list.")
  private Double perHour;

  @Mixin private Plugins plugins;

  @Override
  public Integer call() {
    Circuit circuit = JobReader.readUnfinished(job).circuit();
    Set<String> faults =
        plugins.catalogue().faults().stream().map(LeakFault::id).collect(Collectors.toSet());
    StatedEntry settings =
        new StatedEntry()
            .put("currency", "--currency", currency)
            .put("per_hour", "--per-hour", perHour);
    StatedEntry offer =
        new StatedEntry()
            .put("name", "", name)
            .put("part", "--part", JobArgument.id(circuit, part))
            .put(
                "cures", "--cures", String.join(" --cures ", cures), cures.isEmpty() ? null : cures)
            .put("price", "--price", price)
            .put("minutes", "--minutes", minutes);
    PriceList changed = PriceFile.set(list, settings, offer, circuit, faults);
    PrintWriter out = spec.commandLine().getOut();
    Wrapped.print(
        out,
        "",
        "Set: " + name + ", " + Money.text(price, changed.currency()) + ", in " + list + ".");
    out.println("Next: holdcurve whatif " + job + " --parts " + list);
    return 0;
  }
}
