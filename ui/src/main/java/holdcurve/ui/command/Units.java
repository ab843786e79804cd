package holdcurve.ui.command;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.LogUnits;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The unit in which a command reads and prints pressures. */
final class Units {
  private static final List<PressureUnit> CHOICES =
      List.of(PressureUnit.PSI, PressureUnit.KPA, PressureUnit.BAR);

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      converter = Choice.class,
      description = "Pressures in psi, kPa or bar (default: what the log used, else bar).")
  private PressureUnit chosen;

  /** Understands the name of a unit. */
  static final class Choice implements ITypeConverter<PressureUnit> {
    @Override
    public PressureUnit convert(String written) {
      return PressureUnit.of(written)
          .filter(CHOICES::contains)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'" + written + "' is no unit of pressure here; use psi, kPa or bar."));
    }
  }

  /** The chosen one, or bar. */
  PressureUnit unit() {
    return chosen == null ? PressureUnit.BAR : chosen;
  }

  /** The chosen one, or that of the job's last log. */
  PressureUnit ofJob(Path job) {
    return or(chosen == null ? LogUnits.ofJob(job) : Optional.empty());
  }

  /** The chosen one, or that of the log. */
  PressureUnit ofLog(Path log) {
    return or(chosen == null ? LogUnits.ofLog(log) : Optional.empty());
  }

  private PressureUnit or(Optional<PressureUnit> logged) {
    return logged.orElse(unit());
  }
}
