package holdcurve.ui.window.suspects;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
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
    return Figures.percent(suspect.probability());
  }

  /** How bad it is; empty for no fault. */
  String size(PressureUnit unit) {
    return suspect.size().map(size -> Figures.size(size, unit)).orElse("");
  }

  /** What a person hears who can't see the row. */
  String spoken(PressureUnit unit) {
    String where = suspect.where().isEmpty() ? "" : ", " + suspect.where();
    String size = size(unit).isEmpty() ? "" : ", " + size(unit);
    return suspect.name() + where + ", " + percent() + size;
  }
}
