package holdcurve.ui.window;

import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.ranking.RankingService;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.RescueModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.property.SimpleStringProperty;
import javafx.stage.Stage;
import org.testfx.api.FxToolkit;

/** A desk whose rankings are real ones, done in the background. */
final class WorkingDesk {
  private WorkingDesk() {}

  static Desk of(
      Function<Optional<Path>, FaultCatalogue> loader, FileDialogs dialogs, Executor background) {
    FaultsModel faults = new FaultsModel(loader, null);
    OpenJobModel jobs =
        new OpenJobModel(
            JobReader::readUnfinished,
            () -> new RankingService(faults.catalogue()),
            background,
            Platform::runLater);
    return new Desk(
        jobs,
        faults,
        new RescueModel(jobs, List.of()),
        new PracticeLog(),
        new Appearance(),
        dialogs,
        new SimpleStringProperty());
  }

  /** Ends its work and closes its window. */
  static void close(Desk desk, Stage stage, ExecutorService background) throws Exception {
    FxToolkit.setupFixture(
        () -> {
          desk.jobs().ranking().cancel();
          stage.close();
        });
    background.shutdownNow();
  }
}
