package holdcurve.physics.ode;

import java.io.IOException;
import java.io.ObjectInput;
import java.io.ObjectOutput;
import org.apache.commons.math3.ode.EquationsMapper;
import org.apache.commons.math3.ode.sampling.AbstractStepInterpolator;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/**
 * Values inside one step of {@link RosenbrockIntegrator}, by the dense output of its method. The
 * state has the order that {@link RosenbrockTableau.Orders#dense} tells, the derivative one less.
 */
public final class RosenbrockStepInterpolator extends AbstractStepInterpolator {
  private double[] start;
  private double[] end;
  private double[][] dense;

  /** For deserialization only. */
  public RosenbrockStepInterpolator() {}

  RosenbrockStepInterpolator(int denseCount, double[] y, boolean forward, EquationsMapper mapper) {
    super(y.clone(), forward, mapper, new EquationsMapper[0]);
    start = y.clone();
    end = y.clone();
    dense = new double[denseCount][y.length];
  }

  private RosenbrockStepInterpolator(RosenbrockStepInterpolator other) {
    super(other);
    start = other.start.clone();
    end = other.end.clone();
    dense = new double[other.dense.length][];
    for (int l = 0; l < dense.length; l++) {
      dense[l] = other.dense[l].clone();
    }
  }

  /** Takes over the step that a run has just accepted. */
  void load(RosenbrockRun run) {
    run.fillDense();
    System.arraycopy(run.start(), 0, start, 0, start.length);
    System.arraycopy(run.end(), 0, end, 0, end.length);
    System.arraycopy(run.end(), 0, currentState, 0, end.length);
    for (int l = 0; l < dense.length; l++) {
      System.arraycopy(run.dense()[l], 0, dense[l], 0, start.length);
    }
    storeTime(run.time());
  }

  @Override
  protected StepInterpolator doCopy() {
    return new RosenbrockStepInterpolator(this);
  }

  @Override
  protected void computeInterpolatedStateAndDerivatives(double theta, double oneMinusThetaH) {
    DenseOutput.state(theta, start, end, dense, interpolatedState);
    DenseOutput.slope(theta, h, start, end, dense, interpolatedDerivatives);
  }

  @Override
  public void writeExternal(ObjectOutput out) throws IOException {
    writeBaseExternal(out);
    out.writeObject(start);
    out.writeObject(end);
    out.writeObject(dense);
  }

  @Override
  public void readExternal(ObjectInput in) throws IOException, ClassNotFoundException {
    double time = readBaseExternal(in);
    start = (double[]) in.readObject();
    end = (double[]) in.readObject();
    dense = (double[][]) in.readObject();
    setInterpolatedTime(time);
  }
}
