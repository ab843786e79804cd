package holdcurve.file;

import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import java.util.Locale;

/** Reads the name of a fluid in a sheet. */
final class FluidNames {
  private FluidNames() {}

  static Fluid read(SheetFields fields, String name, String usual) {
    String remedy = "use one of " + Words.list(Fluids.onBench().stream().map(Fluid::id).toList());
    String id =
        fields
            .find(name)
            .map(p -> p.text(remedy))
            .orElse(usual)
            .toLowerCase(Locale.ROOT)
            .replace(' ', '-');
    return Fluids.onBench().stream()
        .filter(fluid -> fluid.id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> fields.get(name, remedy).bad("'" + id + "' is no fluid known here", remedy));
  }
}
