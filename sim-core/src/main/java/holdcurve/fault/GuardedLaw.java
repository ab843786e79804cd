package holdcurve.fault;

import holdcurve.physics.flow.FlowLaw;
import java.util.function.DoubleUnaryOperator;

/**
 * A leak law whose code came from a plugin folder: what it throws names the plugin, and it is
 * thrown out where it doesn't come back. It is called on the integrator's own thread, millions of
 * times.
 *
 * @param record takes down each failure before it is thrown
 */
record GuardedLaw(String who, FlowLaw law, PluginRecord record) implements FlowLaw {
  private static final String ABOUT = "its leak law was worked out";

  @Override
  public double flow(double difference) {
    return answer(law::flow, difference);
  }

  @Override
  public double slope(double difference) {
    return answer(law::slope, difference);
  }

  private double answer(DoubleUnaryOperator question, double difference) {
    record.requireNotHung();
    try {
      return finite(Watchdog.visit().ask(question, difference), difference);
    } catch (FaultFailure e) {
      throw e;
    } catch (CutOffException e) {
      String what = "gave no answer within " + Watchdog.LIMIT_SECONDS + " s when " + ABOUT;
      throw record.noteHung(new FaultFailure(who, what, e));
    } catch (RuntimeException | Error e) {
      String what = "failed when " + ABOUT + " (" + FaultFailure.words(e) + ")";
      throw record.note(new FaultFailure(who, what, e));
    }
  }

  private double finite(double answer, double difference) {
    if (!Double.isFinite(answer)) {
      String what = "gave " + answer + " when " + ABOUT + " at " + difference + " Pa";
      throw record.note(new FaultFailure(who, what));
    }
    return answer;
  }

  /** The law itself where its code is the program's own. */
  static FlowLaw around(String who, FlowLaw law, PluginRecord record) {
    boolean own = law.getClass().getClassLoader() == FlowLaw.class.getClassLoader();
    return own || law instanceof GuardedLaw ? law : new GuardedLaw(who, law, record);
  }
}
