package holdcurve.ui.window.suspects;

import holdcurve.infer.Suspect;
import holdcurve.infer.SuspectGroup;
import java.util.Optional;

/**
 * A line of the ranking.
 *
 * @param suspect who it is about
 * @param inGroup whether it is one of several that can't be told apart
 * @param groupStarting the group whose first member this is; absent for others
 */
record SuspectRow(Suspect suspect, boolean inGroup, Optional<SuspectGroup> groupStarting) {
  /** Share of the bar that is filled [-]. */
  double share() {
    return suspect.probability();
  }

  String percent() {
    return Figures.percent(suspect.probability(), suspect.probabilityError());
  }

  /** Leak and drops; empty for a suspect that is no leak. */
  String leak() {
    return suspect.leak().map(leak -> Figures.leak(leak) + ", " + Figures.drops(leak)).orElse("");
  }

  /** What a person hears who can't see the row. */
  String spoken() {
    String where = suspect.where().isEmpty() ? "" : ", " + suspect.where();
    return suspect.name() + where + ", " + percent() + ", " + leak();
  }
}
