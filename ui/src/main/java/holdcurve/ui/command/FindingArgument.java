package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.StatedEntry;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.Job;
import java.util.function.BiFunction;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The job that a finding is added to. */
final class FindingArgument {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Mixin private JobArgument job;

  /**
   * Adds it and says so.
   *
   * @param stated the finding, on a circuit and with pressures typed in a unit
   */
  int add(BiFunction<Circuit, PressureUnit, StatedEntry> stated) {
    return job.locked(
        () -> {
          Circuit circuit = job.edited().circuit();
          PressureUnit unit = job.unit();
          StatedEntry entry = stated.apply(circuit, unit);
          Job changed = job.edited().addFinding(entry);
          Finding last = changed.findings().get(changed.findings().size() - 1);
          Printout out = new Printout(spec.commandLine().getOut(), unit);
          Wrapped.print(out, "", "Noted: " + last.inDatedWords(unit) + ".");
          return 0;
        });
  }
}
