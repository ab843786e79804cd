package holdcurve.inference.answer;

import holdcurve.common.message.Message;
import java.util.Locale;

/**
 * One thing that speaks for or against a suspect.
 *
 * @param said part of a sentence, no full stop, such as "'feed clamped', 1 to 10 min: readings lie
 *     0.01 bar from its curve, 0.31 bar from the other's"
 * @param weight by how much it makes the suspect likelier than its rival, natural logarithm of a
 *     factor; negative where it speaks against it
 */
public record Reason(Message said, double weight) {
  /** More than this needs no figure [-]. */
  private static final double MOST_TIMES = 1000;

  /** One without a pressure in it. */
  public Reason(String words, double weight) {
    this(Message.plain(words), weight);
  }

  /** What it is, with pressures in bar. */
  public String what() {
    return said.toString();
  }

  /** Whether it speaks for the suspect. */
  public boolean speaksFor() {
    return weight > 0;
  }

  /** The weight in words, such as "22 times likelier". */
  public String strength() {
    double times = Math.exp(Math.abs(weight));
    String side = weight > 0 ? "likelier" : "less likely";
    return times > MOST_TIMES
        ? String.format(Locale.ROOT, "over %.0f times %s", MOST_TIMES, side)
        : String.format(Locale.ROOT, times < 10 ? "%.1f times %s" : "%.0f times %s", times, side);
  }
}
