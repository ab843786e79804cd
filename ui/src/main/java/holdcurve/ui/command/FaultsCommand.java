package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.fault.explain.FaultExplanation;
import holdcurve.file.CircuitReader;
import holdcurve.file.FaultListWriter;
import holdcurve.physics.circuit.Circuit;
import holdcurve.ui.scenario.Scenarios;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the faults that are known. */
@Command(
    name = "faults",
    description = "Lists the faults that are known, and where they can sit in a circuit.",
    mixinStandardHelpOptions = true)
final class FaultsCommand implements Callable<Integer> {
  /** Sites stand below the name of their fault. */
  private static final String SITE = " ".repeat(25);

  @Spec private CommandSpec spec;

  @Mixin private Plugins plugins;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "Show the sites in this circuit (*.circuit.json).")
  private Path circuitFile;

  @Option(
      names = "--explain",
      paramLabel = "ID",
      description = "Explain this fault: its law, its parameters and their sources, and its curve.")
  private String explained;

  @Mixin private Output output;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    FaultCatalogue catalogue = plugins.catalogue();
    Circuit circuit = circuitFile == null ? null : CircuitReader.read(circuitFile);
    List<LeakFault> faults =
        explained == null
            ? catalogue.faults()
            : List.of(FaultChoice.fault(catalogue, "--explain", explained));
    if (explained == null) {
      list(faults, circuit, out);
      catalogue.problems().forEach(out::println);
      catalogue.failures().forEach(out::println);
    } else {
      out.println(FaultExplanation.of(faults.get(0), circuitOrShipped()));
    }
    out.flush();
    output.write(() -> FaultListWriter.json(faults, catalogue, Optional.ofNullable(circuit)));
    return 0;
  }

  private static void list(List<LeakFault> faults, Circuit circuit, PrintWriter out) {
    for (LeakFault fault : faults) {
      out.printf("%-22s %s%n", fault.id(), fault.name());
      if (circuit != null) {
        printSites(fault, FaultCatalogue.sites(fault, circuit), out);
      }
    }
  }

  private Circuit circuitOrShipped() {
    return CircuitReader.read(
        Optional.ofNullable(circuitFile)
            .or(Scenarios::circuit)
            .orElseThrow(
                () ->
                    InputException.at(
                        "command line",
                        "--explain " + explained,
                        "no circuit is named",
                        "add --circuit and a circuit file")));
  }

  private static void printSites(LeakFault fault, List<Site> sites, PrintWriter out) {
    for (Site site : sites) {
      Wrapped.print(out, SITE, fault.id() + "@" + site.id() + ": " + site.where());
    }
    if (sites.isEmpty()) {
      out.println(SITE + "nowhere in this circuit");
    }
  }
}
