package holdcurve.ui.command;

import holdcurve.check.InputException;
import holdcurve.circuit.Circuit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CircuitReader;
import holdcurve.file.JobReader;
import holdcurve.file.SafeFile;
import holdcurve.file.WhatIfWriter;
import holdcurve.infer.Belief;
import holdcurve.infer.Hypothesis;
import holdcurve.infer.Possibility;
import holdcurve.infer.RankingService;
import holdcurve.job.GaugeSpec;
import holdcurve.job.Job;
import holdcurve.pass.PassLimit;
import holdcurve.whatif.Change;
import holdcurve.whatif.Comparison;
import holdcurve.whatif.WhatIf;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
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
      "  holdcurve whatif --circuit my-car.circuit.json --set feed-hose.length_m=1.5 --fuel petrol-e10"
    },
    mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {
  /** Draws of each hypothesis, or of a circuit that nothing was read from. */
  private static final int DRAWS = 100;

  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

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

  @Mixin private Output output;

  /** What is asked about. */
  private record Asked(String title, Circuit circuit, List<Belief> beliefs) {}

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
    Job job = jobFile == null ? null : JobReader.read(jobFile);
    Circuit circuit = job == null ? CircuitReader.read(circuitFile) : job.circuit();
    Change change = changes.change(circuit, catalogue);
    Asked asked = job == null ? sound(circuit) : believed(job, catalogue);
    Comparison comparison =
        new WhatIf(asked.beliefs(), limit(job), output.seed)
            .compare(asked.title(), circuit, change);
    PrintWriter out = spec.commandLine().getOut();
    WhatIfText.print(comparison, out);
    out.flush();
    if (output.json != null) {
      SafeFile.write(output.json, WhatIfWriter.json(comparison, output.seed));
    }
    return 0;
  }

  private static Function<Circuit, PassLimit> limit(Job job) {
    return job != null && job.upkeep().passStated()
        ? circuit -> job.upkeep().pass()
        : PassLimit::usual;
  }

  private Asked sound(Circuit circuit) {
    Hypothesis none = new Hypothesis(List.of(), 1);
    List<Possibility> draws =
        Possibility.before(circuit, GaugeSpec.usual(), output.seed, 2 * DRAWS);
    return new Asked(circuit.title(), circuit, List.of(new Belief(none, 1, draws)));
  }

  private Asked believed(Job job, FaultCatalogue catalogue) {
    ProgressLine progress = new ProgressLine(spec.commandLine().getErr());
    List<Belief> beliefs =
        new RankingService(catalogue).believe(job, output.seed, DRAWS, progress).beliefs();
    progress.clear();
    return new Asked(job.title(), job.circuit(), beliefs);
  }
}
