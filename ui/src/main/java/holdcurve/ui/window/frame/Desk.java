package holdcurve.ui.window.frame;

import holdcurve.fault.FaultCatalogue;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.RescueModel;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * What every page works with.
 *
 * @param jobs the open job, its ranking, work in the background, the unit of pressures
 * @param faults the faults that are known
 * @param rescue unsaved work of earlier windows
 * @param practice what was scored at practice
 * @param looks theme and size of text
 * @param dialogs asks for files
 * @param page title of the page on view; setting it goes there
 */
public record Desk(
    OpenJobModel jobs,
    FaultsModel faults,
    RescueModel rescue,
    PracticeLog practice,
    Appearance looks,
    FileDialogs dialogs,
    StringProperty page) {
  /** Without unsaved work of earlier windows, with the faults that are shipped. */
  public static Desk alone(OpenJobModel jobs, Appearance looks, FileDialogs dialogs) {
    return new Desk(
        jobs,
        new FaultsModel(FaultCatalogue::load, null),
        new RescueModel(jobs, List.of()),
        new PracticeLog(),
        looks,
        dialogs,
        new SimpleStringProperty());
  }

  /** Likewise, with the usual looks, and nobody to name a file. */
  public static Desk alone(OpenJobModel jobs) {
    return alone(jobs, new Appearance(), near -> Optional.empty());
  }
}
