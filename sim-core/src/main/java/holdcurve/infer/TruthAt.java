package holdcurve.infer;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.hold.Hold;
import holdcurve.side.SideEvidence;
import holdcurve.side.Truth;
import java.util.List;

/** One hypothesis at one point of its latent space, for side evidence. */
final class TruthAt implements Truth {
  private final HypothesisModel model;
  private final double[] u;
  private Circuit sound;
  private Condition overall;

  TruthAt(HypothesisModel model, double[] u) {
    this.model = model;
    this.u = u;
  }

  @Override
  public List<Member> members() {
    return model.members();
  }

  private Circuit soundCircuit() {
    if (sound == null) {
      sound = model.realisation().sound(u);
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
      return model.realisation().condition(soundCircuit(), u, test);
    }
    if (overall == null) {
      overall = model.realisation().condition(soundCircuit(), u, test);
    }
    return overall;
  }

  @Override
  public List<LeakPath> leaks(int member, int test) {
    return model.realisation().leaksOf(member, condition(test));
  }

  @Override
  public Hold hold(int test) {
    return new Hold(condition(test), model.realisation().setup(u, test));
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
  public double unknown(SideEvidence of, int k) {
    return model.unknown(u, of, k);
  }
}
