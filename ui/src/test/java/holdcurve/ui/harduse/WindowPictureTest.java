package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.WindowMain;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window takes a picture of itself and closes. */
class WindowPictureTest {
  private static final List<String> HEADLESS =
      List.of(
          "-Dglass.platform=Monocle",
          "-Dmonocle.platform=Headless",
          "-Dprism.order=sw",
          "-Djava.awt.headless=true",
          "-Dheadless.geometry=1920x1200-32");

  @TempDir private Path folder;

  @Test
  void aRankedJobIsPicturedAndALogIsKept() throws Exception {
    OwnHome own = OwnHome.in(folder);
    Path picture = own.out().resolve("window.png");
    own.run(
        HEADLESS,
        WindowMain.class,
        own.in().resolve("check-valve.job.json").toString(),
        "--snapshot",
        picture.toString());
    BufferedImage seen = ImageIO.read(picture.toFile());
    assertTrue(seen.getWidth() >= 1280 && seen.getHeight() >= 720, seen::toString);
    int[] pixels = seen.getRGB(0, 0, seen.getWidth(), seen.getHeight(), null, 0, seen.getWidth());
    long colours = Arrays.stream(pixels).distinct().count();
    assertTrue(colours > 100, colours + " colours");
    List<String> log = OwnHome.names(own.home().resolve(".holdcurve/log"));
    assertEquals(List.of("window.0.log"), log);
    assertEquals("", Files.readString(own.home().resolve(".holdcurve/log/window.0.log")));
  }

  @Test
  void aJobThatCannotBeReadIsNotPictured() throws Exception {
    OwnHome own = OwnHome.in(folder);
    Path picture = own.out().resolve("window.png");
    AssertionError ended =
        assertThrows(
            AssertionError.class,
            () ->
                own.run(
                    HEADLESS,
                    WindowMain.class,
                    own.in().resolve("none.job.json").toString(),
                    "--snapshot",
                    picture.toString()));
    assertTrue(ended.getMessage().contains("No picture was taken: "), ended.getMessage());
    assertTrue(ended.getMessage().contains("expected: <0> but was: <3>"), ended.getMessage());
    assertFalse(Files.exists(picture));
  }
}
