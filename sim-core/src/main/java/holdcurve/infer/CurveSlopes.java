package holdcurve.infer;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.Part;
import holdcurve.hold.Hold;
import holdcurve.hold.HoldSimulator;
import holdcurve.hold.HoldSlopes;
import holdcurve.infer.Latents.Shared;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Curves at one point of the latent space with their slopes by some of its coordinates. */
final class CurveSlopes {
  private final Realisation realisation;
  private final Latents latents;
  private final HoldSimulator simulator;
  private final double[] u;
  private final int[] by;
  private final double step;
  private final Circuit sound;
  private final Circuit[] movedSound;

  /**
   * @param u where [-]
   * @param by coordinates
   * @param step small change of a coordinate [-]
   */
  CurveSlopes(Realisation realisation, HoldSimulator simulator, double[] u, int[] by, double step) {
    this.realisation = realisation;
    this.latents = realisation.latents();
    this.simulator = simulator;
    this.u = u;
    this.by = by;
    this.step = step;
    this.sound = realisation.sound(u);
    this.movedSound = new Circuit[by.length];
    for (int k = 0; k < by.length; k++) {
      movedSound[k] =
          latents.changesSoundCircuit(by[k]) ? sharing(realisation.sound(moved(k))) : sound;
    }
  }

  /** The same with the parts that weren't moved taken over, so that nobody need compare them. */
  private Circuit sharing(Circuit fresh) {
    Iterator<Part> unmoved = sound.parts().iterator();
    return fresh.map(
        part -> {
          Part before = unmoved.next();
          return part.equals(before) ? before : part;
        });
  }

  /** The curve of one test, with a column of slopes for each coordinate that it depends on. */
  HoldSlopes of(int test, double[] times) {
    Condition condition = realisation.condition(sound, u, test);
    List<Hold> moved = new ArrayList<>();
    for (int k = 0; k < by.length; k++) {
      if (latents.changesCurve(by[k], test)) {
        double[] v = moved(k);
        Condition changed =
            latents.changesCircuit(by[k], test)
                ? realisation.condition(movedSound[k], v, test)
                : condition;
        moved.add(new Hold(changed, realisation.setup(v, test)));
      }
    }
    Hold base = new Hold(condition, realisation.setup(u, test));
    return simulator.slopes(base, moved, step, times);
  }

  private double[] moved(int k) {
    double[] v = u.clone();
    v[by[k]] += step;
    return v;
  }

  /** Column of the k-th coordinate in the slopes of a test, or -1 where the curve has none. */
  int column(int k, int test) {
    if (!latents.changesCurve(by[k], test)) {
      return -1;
    }
    int column = 0;
    for (int j = 0; j < k; j++) {
      column += latents.changesCurve(by[j], test) ? 1 : 0;
    }
    return column;
  }

  /** Whether the k-th coordinate is the gauge's own error, which shifts every reading. */
  boolean isOffset(int k) {
    return by[k] == Shared.GAUGE_OFFSET.ordinal();
  }
}
