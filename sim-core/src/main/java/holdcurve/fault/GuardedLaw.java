package holdcurve.fault;

import holdcurve.flow.FlowLaw;

/**
 * A leak law whose code came from a plugin folder: what it throws names the plugin. It is called on
 * the integrator's own thread, millions of times, so no time limit holds it.
 */
record GuardedLaw(String who, FlowLaw law) implements FlowLaw {
  private static final String ABOUT = "its leak law was worked out";

  @Override
  public double flow(double difference) {
    try {
      return law.flow(difference);
    } catch (RuntimeException | Error e) {
      throw failure(e);
    }
  }

  @Override
  public double slope(double difference) {
    try {
      return law.slope(difference);
    } catch (RuntimeException | Error e) {
      throw failure(e);
    }
  }

  private FaultFailure failure(Throwable e) {
    String what = "failed when " + ABOUT + " (" + FaultFailure.words(e) + ")";
    return new FaultFailure(who, what, e);
  }

  /** The law itself where its code is the program's own. */
  static FlowLaw around(String who, FlowLaw law) {
    boolean own = law.getClass().getClassLoader() == FlowLaw.class.getClassLoader();
    return own || law instanceof GuardedLaw ? law : new GuardedLaw(who, law);
  }
}
