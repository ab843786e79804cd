package holdcurve.ui.window.holdtests;

import holdcurve.common.message.Message;
import holdcurve.common.message.Message.Digits;
import holdcurve.common.message.Message.Pressure;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.JobEdits;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** The gauge that all holds of the job are read from; each change can be taken back. */
final class GaugeDetails {
  /** End of the scale [Pa]. */
  private static final Limits RANGE = new Limits(1e5, 40e5);

  /** Class as a share of the scale [-]. */
  private static final Limits CLASS = new Limits(1e-4, 0.1);

  /** Step to which it is read [Pa]. */
  private static final Limits STEP = new Limits(10, 1e5);

  private final ChosenHold hold;

  private record Limits(double least, double most) {
    boolean hold(OptionalDouble value) {
      return value.isPresent() && value.getAsDouble() >= least && value.getAsDouble() <= most;
    }

    Message said() {
      return Message.of("%s to %s", Message.round(least), Message.round(most));
    }
  }

  GaugeDetails(ChosenHold hold) {
    this.hold = hold;
  }

  private GaugeSpec gauge() {
    Job job = hold.job();
    return job == null ? GaugeSpec.usual() : job.gauge();
  }

  /** End of the scale in the unit shown. */
  String range() {
    return number(gauge().range());
  }

  /** Step to which it is read, in the unit shown. */
  String step() {
    return number(gauge().resolution());
  }

  /** Class of accuracy [%]. */
  String accuracyClass() {
    return stripped(Message.of("%.2f", 100 * gauge().accuracyClass()).toString());
  }

  private String number(double pascals) {
    Pressure fine = new Pressure(pascals, false, Digits.FINE);
    return stripped(hold.pressures().text(Message.of("%s", fine)));
  }

  private static String stripped(String number) {
    return number.contains(".") ? number.replaceFirst("\\.?0+$", "") : number;
  }

  /**
   * @param typed in the unit shown
   * @return whether there are such gauges; if not, the hint says what would be right
   */
  boolean setRange(String typed) {
    return typed.strip().equals(range())
        || set(
            RANGE,
            hold.pressures().parse(typed),
            range -> new GaugeSpec(range, gauge().accuracyClass(), gauge().resolution()),
            Message.of("Gauge: its scale ends at %s.", RANGE.said()));
  }

  /** Likewise. */
  boolean setStep(String typed) {
    return typed.strip().equals(step())
        || set(
            STEP,
            hold.pressures().parse(typed),
            step -> new GaugeSpec(gauge().range(), gauge().accuracyClass(), step),
            Message.of("Gauge: it is read to steps of %s.", STEP.said()));
  }

  /**
   * @param typed [%]
   * @return whether there are such gauges; if not, the hint says what would be right
   */
  boolean setAccuracyClass(String typed) {
    return typed.strip().equals(accuracyClass())
        || set(
            CLASS,
            share(typed),
            share -> new GaugeSpec(gauge().range(), share, gauge().resolution()),
            Message.plain("Gauge: its class is a number from 0.01 to 10, such as 1.6."));
  }

  private static OptionalDouble share(String typed) {
    try {
      return OptionalDouble.of(Double.parseDouble(typed.strip().replace(',', '.')) / 100);
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  private boolean set(
      Limits limits, OptionalDouble value, DoubleFunction<GaugeSpec> made, Message wrong) {
    if (!limits.hold(value)) {
      hold.hintProperty().set(hold.pressures().text(wrong));
      return false;
    }
    GaugeSpec gauge = made.apply(value.getAsDouble());
    hold.jobs().change("gauge", job -> JobEdits.withGauge(job, gauge));
    hold.hintProperty().set("");
    return true;
  }
}
