package holdcurve.inference.likelihood;

import holdcurve.inference.likelihood.Latents.Shared;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSensitivities;
import holdcurve.physics.hold.HoldSimulator;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Curves at one point of the latent space with their sensitivities by some of its coordinates. */
final class CurveSensitivities {
  private final LatentMap latentMap;
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
  CurveSensitivities(
      LatentMap latentMap, HoldSimulator simulator, double[] u, int[] by, double step) {
    this.latentMap = latentMap;
    this.latents = latentMap.latents();
    this.simulator = simulator;
    this.u = u;
    this.by = by;
    this.step = step;
    this.sound = latentMap.sound(u);
    this.movedSound = new Circuit[by.length];
    for (int k = 0; k < by.length; k++) {
      movedSound[k] =
          latents.changesSoundCircuit(by[k]) ? sharing(latentMap.sound(moved(k))) : sound;
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

  /**
   * The curve of one test, with a column of sensitivities for each coordinate that it depends on.
   */
  HoldSensitivities of(int test, double[] times) {
    Condition condition = latentMap.condition(sound, u, test);
    List<Hold> moved = new ArrayList<>();
    for (int k = 0; k < by.length; k++) {
      if (latents.changesCurve(by[k], test)) {
        double[] v = moved(k);
        Condition changed =
            latents.changesCircuit(by[k], test)
                ? latentMap.condition(movedSound[k], v, test)
                : condition;
        moved.add(new Hold(changed, latentMap.setup(v, test)));
      }
    }
    Hold base = new Hold(condition, latentMap.setup(u, test));
    return simulator.sensitivities(base, moved, step, times);
  }

  private double[] moved(int k) {
    double[] v = u.clone();
    v[by[k]] += step;
    return v;
  }

  /**
   * Column of the k-th coordinate in the sensitivities of a test, or -1 where the curve has none.
   */
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
