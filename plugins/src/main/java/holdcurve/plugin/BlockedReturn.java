package holdcurve.plugin;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.PartName;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.Prior;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import java.util.List;

/**
 * A return line that is kinked, swollen inside or crushed: what the regulator spills backs up, and
 * the rail stands above the set pressure while the pump runs. Once the pump has stopped nothing
 * flows there.
 *
 * <p>The whole line is given the narrow bore; a short narrow place of less bore does the same.
 */
public final class BlockedReturn extends PartChange {
  private static final FaultParameter BORE =
      new FaultParameter(
          "as tight as a hole of this width",
          Unit.MILLIMETRE,
          new Prior.LogNormal(Unit.MILLIMETRE.toSi(1.6), 1.35),
          "assumed: a sound one has 6 to 8 mm, and above 2 mm the rise is that of an ordinary regulator",
          false);

  public BlockedReturn() {
    super(Hose.KIND);
  }

  @Override
  public String id() {
    return "blocked-return";
  }

  @Override
  public String name() {
    return "Return line is blocked or kinked";
  }

  @Override
  public String symptoms() {
    return "Too much pressure while the pump runs. It drops to the set pressure when the pump"
        + " stops. Rich running, wet plugs.";
  }

  @Override
  public String repair() {
    return "Relieve the pressure. "
        + Caution.RETURN_CAN.text()
        + " Put the return hose into it, run the pump for a few seconds and read the gauge. If it"
        + " shows the set pressure, clear or renew the line to the tank. If it stays high, the"
        + " regulator is blocked.";
  }

  @Override
  public List<Site> sites(Circuit circuit) {
    return circuit.partsOf(Regulator.KIND).stream()
        .flatMap(regulator -> circuit.parts().stream().filter(p -> isNext(p, regulator)))
        .map(line -> new Site(line.id(), PartName.of(line.id()), line.from(), List.of(line.id())))
        .toList();
  }

  private static boolean isNext(Part part, Part regulator) {
    boolean line = part.kind() == Hose.KIND || part.kind() == RigidPipe.KIND;
    return line && part.from().equals(regulator.to());
  }

  @Override
  public List<FaultParameter> parameters() {
    return List.of(BORE);
  }

  @Override
  Condition change(Condition condition, Part line, double[] parameters) {
    Property bore = line.kind() == Hose.KIND ? Hose.BORE : RigidPipe.BORE;
    return condition.with(line.id(), bore, Math.min(parameters[0], line.value(bore)));
  }
}
