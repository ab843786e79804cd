package holdcurve.inference.likelihood;

import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.hold.Hold;
import java.util.List;

/** One hypothesis at one point of its latent space, for side evidence. */
final class LatentCircuitState implements CircuitState {
  private final HypothesisModel model;
  private final double[] u;
  private Circuit sound;
  private Condition overall;

  LatentCircuitState(HypothesisModel model, double[] u) {
    this.model = model;
    this.u = u;
  }

  @Override
  public List<Member> members() {
    return model.members();
  }

  private Circuit soundCircuit() {
    if (sound == null) {
      sound = model.latentMap().sound(u);
    }
    return sound;
  }

  @Override
  public Condition sound() {
    return Condition.sound(soundCircuit());
  }

  @Override
  public Condition condition(int test) {
    if (test != ALL_TESTS) {
      return model.latentMap().condition(soundCircuit(), u, test);
    }
    if (overall == null) {
      overall = model.latentMap().condition(soundCircuit(), u, test);
    }
    return overall;
  }

  @Override
  public List<LeakPath> leaks(int member, int test) {
    return model.latentMap().leaksOf(member, condition(test));
  }

  @Override
  public Hold hold(int test) {
    return new Hold(condition(test), model.latentMap().setup(u, test));
  }

  @Override
  public double gaugeOffset() {
    return model.gaugeOffset(u);
  }

  @Override
  public double readingDeviation() {
    return model.readingDeviation(u);
  }

  @Override
  public double unknown(FindingLikelihood of, int k) {
    return model.unknown(u, of, k);
  }
}
