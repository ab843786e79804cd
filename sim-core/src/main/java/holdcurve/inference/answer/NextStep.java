package holdcurve.inference.answer;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.Message;
import java.util.List;

/**
 * One job for the hands: what to do now.
 *
 * @param kind what sort of job
 * @param procedure id that the plan of tests knows it by; empty where it is no test
 * @param words one to three sentences
 * @param cautions to be read before, in this order
 */
public record NextStep(Kind kind, String procedure, Message words, List<Caution> cautions) {
  /** What sort of job. */
  public enum Kind {
    /** A test that divides the causes that are left. */
    TEST,
    /** Make good what was found. */
    REPAIR,
    /** Clear up what can't be right as it was noted. */
    ASK,
    /** Nothing to do. */
    NONE
  }

  public NextStep {
    cautions = List.copyOf(cautions);
  }

  public static NextStep test(String procedure, Message words, Caution... cautions) {
    return new NextStep(Kind.TEST, procedure, words, List.of(cautions));
  }

  /** A repair, after which the pump is run for another hold. */
  public static NextStep repair(Message words) {
    return new NextStep(
        Kind.REPAIR,
        "",
        words,
        List.of(Caution.PETROL, Caution.RELIEVE, Caution.BRIDGED_PUMP, Caution.LOCAL_CODES));
  }

  public static NextStep ask(Message words, Caution... cautions) {
    return new NextStep(Kind.ASK, "", words, List.of(cautions));
  }
}
