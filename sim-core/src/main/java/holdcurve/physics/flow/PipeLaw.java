package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Flow through a pipe with fittings: Δp = (f L/D + ΣK) ρ v²/2, solved for the flow.
 *
 * <p>Without fittings the answer is explicit ({@link PipeFriction}). With fittings the share of the
 * pressure that friction takes is found: in closed form while the flow is laminar, else by a
 * bracketed Newton iteration to the last digits, so that the slope is that of the computed flow.
 * Fitting losses count in full in laminar flow too, as in the pipe-flow handbook TP-410.
 */
public final class PipeLaw implements FlowLaw {
  private static final int MOST_STEPS = 60;

  /** Newton's error after a step of this relative size is its square, below rounding. */
  private static final double LAST_STEP = 1e-9;

  private final PipeFriction friction;

  /** Kármán number per root of friction pressure [1/Pa^½]. */
  private final double karmanScale;

  /** Flow per Reynolds number [m³/s]. */
  private final double flowScale;

  /** Laminar conductance of the friction alone [m³/(s·Pa)]. */
  private final double conductance;

  /** Friction pressure where laminar flow ends [Pa]. */
  private final double laminarEnd;

  /** Fitting pressure per square of flow [Pa·s²/m⁶]. */
  private final double fittings;

  /**
   * @param pipe geometry
   * @param density [kg/m³]
   * @param viscosity dynamic [Pa·s]
   */
  public PipeLaw(Pipe pipe, double density, double viscosity) {
    double kinematic =
        Require.positive(viscosity, "viscosity", "Pa·s")
            / Require.positive(density, "density", "kg/m³");
    double bore = pipe.bore();
    friction = new PipeFriction(Math.min(pipe.roughness() / bore, PipeFriction.ROUGHEST));
    karmanScale = bore / kinematic * Math.sqrt(2 * bore / (density * pipe.length()));
    flowScale = Math.PI * bore * kinematic / 4;
    conductance = flowScale * karmanScale * karmanScale / 64;
    double root = PipeFriction.KARMAN_LAMINAR_END / karmanScale;
    laminarEnd = root * root;
    fittings = pipe.fittingLoss() * density / (2 * pipe.area() * pipe.area());
  }

  @Override
  public double flow(double difference) {
    return Math.copySign(frictionFlow(frictionShare(Math.abs(difference))), difference);
  }

  @Override
  public double slope(double difference) {
    double share = frictionShare(Math.abs(difference));
    double slope = frictionSlope(share);
    return slope / (1 + 2 * fittings * frictionFlow(share) * slope);
  }

  private double frictionFlow(double pressure) {
    return pressure <= laminarEnd
        ? conductance * pressure
        : flowScale * friction.reynolds(karmanScale * Math.sqrt(pressure));
  }

  private double frictionSlope(double pressure) {
    if (pressure <= laminarEnd) {
      return conductance;
    }
    double karman = karmanScale * Math.sqrt(pressure);
    return flowScale * friction.reynoldsSlope(karman) * karman / (2 * pressure);
  }

  /** The part of the pressure difference that wall friction takes [Pa]. */
  private double frictionShare(double difference) {
    if (fittings == 0) {
      return difference;
    }
    double root = Math.sqrt(1 + 4 * fittings * conductance * conductance * difference);
    double laminar = 2 * difference / (1 + root);
    return laminar <= laminarEnd ? laminar : turbulentShare(difference);
  }

  /**
   * Newton on x + c Q(x)² = Δp, which rises in x; a step that leaves the bracket is replaced by
   * halving it. Starts from the share at a fixed ratio of losses, which is nearly right in
   * turbulent flow: three or four steps.
   */
  private double turbulentShare(double difference) {
    double low = laminarEnd;
    double high = difference;
    double all = frictionFlow(difference);
    double x = Math.max(low, difference / (1 + fittings * all * all / difference));
    for (int i = 0; i < MOST_STEPS; i++) {
      double flow = frictionFlow(x);
      double excess = x + fittings * flow * flow - difference;
      if (excess > 0) {
        high = x;
      } else {
        low = x;
      }
      double next = x - excess / (1 + 2 * fittings * flow * frictionSlope(x));
      if (Math.abs(next - x) <= LAST_STEP * x) {
        return next;
      }
      x = next > low && next < high ? next : (low + high) / 2;
    }
    return x;
  }
}
