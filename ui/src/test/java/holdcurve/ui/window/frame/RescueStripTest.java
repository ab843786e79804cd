package holdcurve.ui.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.TypingRobot;
import holdcurve.ui.window.job.Autosave;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.RescueModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/** Unsaved work of last time is not lost by one press of a key. */
class RescueStripTest {
  @Test
  void theFirstPressOnlyAsks(@TempDir Path folder) throws Exception {
    FxToolkit.registerPrimaryStage();
    Path work = Files.createDirectory(folder.resolve("work"));
    OpenJobModel jobs =
        new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
    RescueModel model =
        new RescueModel(jobs, List.of(new Autosave.Kept(work, Jobs.twoHolds(), Optional.empty())));
    new TypingRobot()
        .interact(
            () -> {
              RescueStrip strip = new RescueStrip(model);
              Button away = (Button) strip.lookupAll(".button").toArray()[1];
              assertEquals("Throw it away", away.getText());
              away.fire();
              assertEquals(1, model.found().size());
              assertTrue(Files.exists(work));
              assertEquals("Gone for good: throw it away", away.getText());
              away.fire();
              assertEquals(0, model.found().size());
              assertFalse(Files.exists(work));
            });
  }
}
