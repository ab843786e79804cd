package holdcurve.advice.check;

import holdcurve.common.message.Message;
import holdcurve.inference.answer.Diagnosis;

/**
 * The answer to "is it put right?".
 *
 * @param kind what sort of answer it is
 * @param words a sentence for a mechanic, with its full stop
 * @param next what to do now, one or two sentences; may be empty
 */
public record CheckVerdict(Kind kind, Message words, Message next) {
  /** The words, with pressures in bar. */
  public String sentence() {
    return words.toString();
  }

  /** What a diagnosis says of a repair. */
  static CheckVerdict of(Diagnosis diagnosis) {
    Kind kind =
        switch (diagnosis.verdict().kind()) {
          case SOUND -> Kind.HOLDS;
          case LEAK, FAULT -> Kind.FAULTY;
          case OPEN, UNEXPLAINED -> Kind.CANNOT_SAY;
        };
    return new CheckVerdict(kind, diagnosis.verdict().words(), diagnosis.next().words());
  }

  /** What the readings allow to say. */
  public enum Kind {
    /** It holds as this circuit should, and stays above the pass limit. */
    HOLDS,
    /** It doesn't. */
    FAULTY,
    /** The readings don't settle it. */
    CANNOT_SAY
  }
}
