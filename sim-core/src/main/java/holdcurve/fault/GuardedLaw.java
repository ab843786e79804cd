package holdcurve.fault;

import holdcurve.flow.FlowLaw;
import java.util.function.UnaryOperator;

/**
 * A leak law whose code came from a plugin folder: what it throws names the plugin. It is called on
 * the integrator's own thread, millions of times, so no time limit holds it.
 *
 * @param heard told of each failure before it is thrown
 */
record GuardedLaw(String who, FlowLaw law, UnaryOperator<FaultFailure> heard) implements FlowLaw {
  private static final String ABOUT = "its leak law was worked out";

  @Override
  public double flow(double difference) {
    try {
      return finite(law.flow(difference), difference);
    } catch (FaultFailure e) {
      throw e;
    } catch (RuntimeException | Error e) {
      throw failure(e);
    }
  }

  @Override
  public double slope(double difference) {
    try {
      return finite(law.slope(difference), difference);
    } catch (FaultFailure e) {
      throw e;
    } catch (RuntimeException | Error e) {
      throw failure(e);
    }
  }

  private double finite(double answer, double difference) {
    if (!Double.isFinite(answer)) {
      String what = "gave " + answer + " when " + ABOUT + " at " + difference + " Pa";
      throw heard.apply(new FaultFailure(who, what));
    }
    return answer;
  }

  private FaultFailure failure(Throwable e) {
    String what = "failed when " + ABOUT + " (" + FaultFailure.words(e) + ")";
    return heard.apply(new FaultFailure(who, what, e));
  }

  /** The law itself where its code is the program's own. */
  static FlowLaw around(String who, FlowLaw law, UnaryOperator<FaultFailure> heard) {
    boolean own = law.getClass().getClassLoader() == FlowLaw.class.getClassLoader();
    return own || law instanceof GuardedLaw ? law : new GuardedLaw(who, law, heard);
  }
}
