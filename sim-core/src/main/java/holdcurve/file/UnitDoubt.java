package holdcurve.file;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Regulator;
import holdcurve.record.log.LogImport;
import holdcurve.record.log.Reading;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Whether the heading of a log names a unit in which its readings can't well be. */
final class UnitDoubt {
  /** A hold starts within this factor of the set pressure: assumed. */
  private static final double FAR = 3;

  private static final double NEAR = 1.5;

  private UnitDoubt() {}

  /** Readings that start far from the set pressure, and near it in another unit. */
  static Optional<Message> of(LogImport read, Circuit circuit) {
    List<Reading> hold = read.log().hold();
    double start = hold.stream().limit(3).mapToDouble(Reading::pressure).max().orElse(0);
    double set = circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    if (read.unit().isEmpty() || start <= 0 || isWithin(FAR, start, set)) {
      return Optional.empty();
    }
    PressureUnit named = read.unit().get();
    double written = named.fromPascal(start);
    return Arrays.stream(PressureUnit.values())
        .filter(unit -> isWithin(NEAR, unit.toPascal(written), set))
        .findFirst()
        .map(
            unit ->
                Message.of(
                    "The heading says %s, but the readings look like %s: they start at %s, and the"
                        + " regulator is set to %s. Check the heading.",
                    named.symbol(), unit.symbol(), Message.pressure(start), Message.pressure(set)));
  }

  private static boolean isWithin(double factor, double pressure, double set) {
    return pressure >= set / factor && pressure <= set * factor;
  }
}
