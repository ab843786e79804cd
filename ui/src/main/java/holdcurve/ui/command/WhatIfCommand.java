package holdcurve.ui.command;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.Comparison;
import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.WhatIf;
import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CircuitReader;
import holdcurve.file.JobReader;
import holdcurve.file.PriceListReader;
import holdcurve.file.WhatIfWriter;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import holdcurve.record.limit.PassLimit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tries changes before anything is bought or taken apart. */
@Command(
    name = "whatif",
    description = {
      "Compares hold, build-up and rail pressure before and after a change.",
      "  holdcurve whatif my-car.job.json --replace check-valve",
      "  holdcurve whatif --circuit my-car.circuit.json --set feed-hose.length_m=1.5 --fuel"
          + " petrol-e10"
    },
    mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {
  /** Draws of each hypothesis, or of a circuit that nothing was read from. */
  private static final int DRAWS = 100;

  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Mixin private Rates rates;

  @Parameters(
      arity = "0..1",
      paramLabel = "JOB",
      description = "A job (*.job.json): what its readings say of the circuit counts.")
  private Path jobFile;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "Instead of a job: a circuit (*.circuit.json), taken as sound.")
  private Path circuitFile;

  @Mixin private ChangeOptions changes;

  @Option(
      names = "--parts",
      paramLabel = "FILE",
      description =
          "Repairs with your prices (JSON or CSV). It says what each repair would help, and"
              + " the order of tests and repairs that costs least.")
  private Path prices;

  @Option(
      names = "--per-hour",
      paramLabel = "PRICE",
      description = "What an hour of work counts, instead of what the file says.")
  private Double perHour;

  @Mixin private Units units;

  @Mixin private SeededOutput output;

  /**
   * What is asked about.
   *
   * @param believed what is believed of a job; absent for a circuit alone
   */
  private record Asked(
      String title,
      Circuit circuit,
      List<HypothesisPosterior> posterior,
      Optional<Posterior> believed) {}

  @Override
  public Integer call() {
    FaultCatalogue catalogue = plugins.catalogue();
    if ((jobFile == null) == (circuitFile == null)) {
      throw InputException.at(
          "command line",
          "",
          jobFile == null ? "nothing to ask about" : "both a job and a circuit are named",
          "name a job, or a circuit with --circuit");
    }
    Job job = jobFile == null ? null : CurrentTests.of(JobReader.read(jobFile));
    Circuit circuit = job == null ? CircuitReader.read(circuitFile) : job.circuit();
    Change change = changes.change(circuit, catalogue);
    Optional<PriceList> list = Optional.ofNullable(prices).map(f -> read(f, circuit, catalogue));
    Asked asked = job == null ? sound(circuit) : believed(job, catalogue);
    Optional<Comparison> comparison =
        change.isNone() && list.isPresent()
            ? Optional.empty()
            : Optional.of(
                new WhatIf(asked.posterior(), limit(job), output.seed)
                    .compare(asked.title(), circuit, change));
    Optional<Offers> offers =
        list.flatMap(l -> asked.believed().map(b -> Offers.of(b, l, limit(job), output.seed)));
    Printout out =
        new Printout(
            spec.commandLine().getOut(), job == null ? units.unit() : units.ofJob(jobFile));
    comparison.ifPresent(c -> WhatIfText.print(c, out));
    if (job == null) {
      Wrapped.print(
          out,
          "",
          "No hold was read on this circuit: what its description leaves open may be anything"
              + " usual, so the ranges are wide. A job with a hold narrows them.");
    }
    offers.ifPresent(o -> new OffersText(out).print(asked.title(), o));
    out.flush();
    output.write(
        () ->
            WhatIfWriter.json(
                asked.title(),
                output.seed,
                comparison,
                offers.map(Offers::chances),
                offers.map(Offers::order)));
    return 0;
  }

  private PriceList read(Path file, Circuit circuit, FaultCatalogue catalogue) {
    if (jobFile == null) {
      throw InputException.at(
          "command line",
          "--parts " + file,
          "a circuit alone has no fault to repair",
          "name a job with its hold tests");
    }
    if (perHour != null && !(perHour >= 0 && perHour <= 1e6)) {
      throw InputException.at(
          "command line", "--per-hour " + perHour, "that is no price", "give a number from 0");
    }
    Set<String> faults = catalogue.faults().stream().map(LeakFault::id).collect(Collectors.toSet());
    PriceList list = PriceListReader.read(file, circuit, faults);
    return perHour == null ? list : list.withPerHour(perHour);
  }

  private static Function<Circuit, PassLimit> limit(Job job) {
    return job != null ? job.upkeep()::passOf : PassLimit::usual;
  }

  private Asked sound(Circuit circuit) {
    Hypothesis none = new Hypothesis(List.of(), 1);
    List<PosteriorDraw> draws =
        PosteriorDraw.before(circuit, GaugeSpec.usual(), output.seed, 2 * DRAWS);
    return new Asked(
        circuit.title(),
        circuit,
        List.of(new HypothesisPosterior(none, 1, draws)),
        Optional.empty());
  }

  private Asked believed(Job job, FaultCatalogue catalogue) {
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    Posterior posterior =
        rates
            .service(catalogue, jobFile, job, progress)
            .verdictOnly()
            .believe(job, output.seed, DRAWS, progress);
    progress.clear();
    Undecided.stopIfUnexplained(posterior.ranking());
    return new Asked(job.title(), job.circuit(), posterior.posterior(), Optional.of(posterior));
  }
}
