package holdcurve.ui.command;

import holdcurve.circuit.Circuit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.file.CircuitReader;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the faults that are known. */
@Command(
    name = "faults",
    description = "Lists the faults that are known, and where they can sit in a circuit.",
    mixinStandardHelpOptions = true)
final class FaultsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--circuit",
      paramLabel = "CIRCUIT",
      description = "Show the sites in this circuit (*.circuit.json).")
  private Path circuitFile;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    FaultCatalogue catalogue = FaultCatalogue.load();
    Circuit circuit = circuitFile == null ? null : CircuitReader.read(circuitFile);
    for (LeakFault fault : catalogue.faults()) {
      out.printf("%-22s %s%n", fault.id(), fault.name());
      if (circuit != null) {
        printSites(fault, fault.sites(circuit), out);
      }
    }
    catalogue.problems().forEach(out::println);
    out.flush();
    return 0;
  }

  private static void printSites(LeakFault fault, List<Site> sites, PrintWriter out) {
    for (Site site : sites) {
      out.printf("%-22s   %s: %s%n", "", fault.id() + "@" + site.id(), site.where());
    }
    if (sites.isEmpty()) {
      out.printf("%-22s   nowhere in this circuit%n", "");
    }
  }
}
