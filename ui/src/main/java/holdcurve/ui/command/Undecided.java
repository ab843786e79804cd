package holdcurve.ui.command;

import holdcurve.common.input.NoAnswerException;
import holdcurve.common.text.Titles;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Verdict;

/** Questions that build on a ranking have no answer where it has none. */
final class Undecided {
  private Undecided() {}

  /**
   * @throws NoAnswerException if no hypothesis explains the readings
   */
  static void stopIfUnexplained(Ranking ranking) {
    if (ranking.verdict().kind() == Verdict.Kind.UNEXPLAINED) {
      throw new NoAnswerException(
          Titles.shown(ranking.job()) + ": " + ranking.verdict().sentence());
    }
  }
}
