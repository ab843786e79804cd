package holdcurve.fault;

import holdcurve.common.work.ComputationException;

/** A fault plugin misbehaved. The message is one sentence that names it. */
public final class FaultFailure extends ComputationException {
  private static final int LONGEST = 160;

  private final String faultId;

  /**
   * @param who id of the fault, or what else it can be named by
   * @param what it did, such as "gave no sites"; no full stop
   */
  FaultFailure(String who, String what, Throwable cause) {
    super("The fault plugin '" + who + "' " + what + ".", cause);
    this.faultId = who;
  }

  FaultFailure(String who, String what) {
    this(who, what, null);
  }

  /** The fault it is about. */
  public String faultId() {
    return faultId;
  }

  /** A foreign exception in a few words on one line. */
  static String words(Throwable thrown) {
    String said;
    try {
      said = thrown.getMessage();
    } catch (RuntimeException | Error e) {
      said = "no readable message";
    }
    String type = thrown.getClass().getSimpleName();
    return said == null || said.isBlank() ? type : type + ", " + shown(said);
  }

  /** Foreign text made safe to put into a sentence: one line, not too long. */
  static String shown(String text) {
    String line = String.valueOf(text).replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "…";
  }
}
