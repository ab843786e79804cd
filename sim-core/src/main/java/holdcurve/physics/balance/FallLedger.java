package holdcurve.physics.balance;

import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.Operation;
import holdcurve.physics.ode.LeanRosenbrockDriver;
import holdcurve.physics.ode.RosenbrockMethod;
import holdcurve.physics.ode.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps the books of one simulated hold: whatever flows into or out of the fuel that stands in one
 * with the gauge is divided, at the moment it flows, by what that fuel and its walls give for a
 * change of pressure. The parts add up to the fall, and their order doesn't matter.
 */
public final class FallLedger {
  private static final double TOLERANCE = 5e-5;

  private final Hold hold;
  private final double from;
  private final double to;
  private LedgerEquations equations;
  private double[] atStart;
  private double[] atEnd;

  private FallLedger(Hold hold, double from, double to) {
    this.hold = hold;
    this.from = from;
    this.to = to;
  }

  /**
   * @param from start of the fall, since the pump stopped [s]
   * @param to its end, later [s]
   * @throws holdcurve.physics.ode.StiffIntegrationException if the hold can't be simulated
   */
  public static HoldFall of(Hold hold, double from, double to) {
    FallLedger ledger = new FallLedger(hold, from, to);
    ledger.run();
    return ledger.fall();
  }

  private void run() {
    HoldSetup setup = hold.setup();
    Network open = assemble(setup.operation());
    equations = new LedgerEquations(open, hold.condition());
    double[] y = new double[equations.getDimension()];
    double[] start = HoldStates.start(open, open, setup);
    System.arraycopy(start, 0, y, 0, start.length);
    boolean clamps = !setup.clamped().isEmpty() && setup.clampTime() < to;
    double openEnd = clamps ? setup.clampTime() : to;
    integrate(0, y, openEnd);
    if (clamps) {
      y = clamp(y);
      integrate(openEnd, y, to);
    }
  }

  private Network assemble(Operation operation) {
    return NetworkAssembler.assemble(hold.condition(), operation, NetworkAssembler.Detail.LUMPED);
  }

  private void integrate(double start, double[] y, double end) {
    if (end > start) {
      double[][] rows = new double[2][y.length];
      new LeanRosenbrockDriver(
              RosenbrockMethod.RODAS4P2.tableau(),
              Tolerances.relative(TOLERANCE, equations.scales()))
          .integrate(equations, start, y, end, new double[] {from, to}, rows);
      if (from >= start && from <= end) {
        atStart = book(rows[0]);
      }
      if (to <= end) {
        atEnd = book(rows[1]);
      }
    }
  }

  /** Pressure, reading, then every entry's pressure and volume taken. */
  private double[] book(double[] row) {
    int entries = equations.entryCount();
    double[] book = new double[2 + 2 * entries];
    book[0] = equations.pressure(row);
    book[1] = row[equations.network().layout().gaugeRow()];
    for (int e = 0; e < entries; e++) {
      FallPart taken = equations.taken(row, e);
      book[2 + e] = taken.pressure();
      book[2 + entries + e] = taken.volume();
    }
    return book;
  }

  /** Carries the state over; what the clamps push is their part. */
  private double[] clamp(double[] y) {
    HoldSetup setup = hold.setup();
    Network open = equations.network();
    Network shut =
        assemble(setup.operation().withClamps(setup.clamped(), setup.clampConductance()));
    LedgerEquations before = equations;
    equations = new LedgerEquations(shut, hold.condition());
    double[] state = HoldStates.clamped(open, Arrays.copyOf(y, open.getDimension()), shut, hold);
    double[] carried = new double[equations.getDimension()];
    System.arraycopy(state, 0, carried, 0, state.length);
    for (int e = 0; e < before.entryCount(); e++) {
      FallPart taken = before.taken(y, e);
      equations.bring(carried, e, -taken.pressure(), -taken.volume());
    }
    double risen = equations.pressure(carried) - before.pressure(y);
    int clamps = hold.condition().leaks().size() + LedgerEquations.CAUSES.indexOf(Cause.CLAMP);
    equations.bring(carried, clamps, risen, risen * equations.capacity(before.pressure(y)));
    return carried;
  }

  private HoldFall fall() {
    double[] end = atEnd;
    int entries = equations.entryCount();
    List<FallPart> leaks = new ArrayList<>();
    Map<Cause, FallPart> others = new EnumMap<>(Cause.class);
    int leakCount = entries - LedgerEquations.CAUSES.size();
    for (int e = 0; e < entries; e++) {
      FallPart part =
          new FallPart(
              end[2 + e] - atStart[2 + e], end[2 + entries + e] - atStart[2 + entries + e]);
      if (e < leakCount) {
        leaks.add(part);
      } else {
        others.put(LedgerEquations.CAUSES.get(e - leakCount), part);
      }
    }
    return new HoldFall(atStart[0] - end[0], atStart[1] - end[1], leaks, others);
  }
}
