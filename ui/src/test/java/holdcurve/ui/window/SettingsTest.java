package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
  @TempDir Path folder;

  private static Desk desk() {
    OpenJobModel model =
        new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
    return Desk.alone(model);
  }

  private Desk attached(Path file) {
    Desk desk = desk();
    new Settings(file, Runnable::run).attach(desk);
    return desk;
  }

  @Test
  void theNextWindowLooksAsTheLastWasLeft() {
    Path file = folder.resolve("below").resolve("window.properties");
    Desk first = attached(file);
    assertEquals(Theme.LIGHT, first.looks().theme());
    first.looks().switchTheme();
    first.looks().enlarge();
    first.jobs().pressures().unitProperty().set(PressureUnit.KPA);
    first.faults().folderProperty().set(folder);
    Desk next = attached(file);
    assertEquals(Theme.DARK, next.looks().theme());
    assertEquals(Appearance.USUAL_SIZE + 2, next.looks().textSizeProperty().get());
    assertEquals(PressureUnit.KPA, next.jobs().pressures().unit());
    assertEquals(folder, next.faults().folderProperty().get());
  }

  @Test
  void aSpoiltFileCostsOnlyTheMemory() throws IOException {
    Path file = folder.resolve("window.properties");
    Files.writeString(file, "theme=PURPLE\ntext_px=99999999999\npressure_unit=\\u00zz\n");
    Desk desk = attached(file);
    assertEquals(Theme.LIGHT, desk.looks().theme());
    assertEquals(Appearance.USUAL_SIZE, desk.looks().textSizeProperty().get());
  }
}
