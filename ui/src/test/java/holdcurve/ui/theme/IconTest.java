package holdcurve.ui.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Test;

class IconTest {
  private static final Path DRAWING =
      Path.of(System.getProperty("holdcurve.root"), "ui/src/packaging/holdcurve.svg");

  /** To draw it anew, write what is made here to icon.png. */
  @Test
  void theIconIsTheDrawing() throws Exception {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    new PNGTranscoder()
        .transcode(new TranscoderInput(DRAWING.toUri().toString()), new TranscoderOutput(png));
    BufferedImage drawn = ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
    BufferedImage shipped = ImageIO.read(Appearance.class.getResource("icon.png"));
    assertEquals(drawn.getWidth(), shipped.getWidth());
    assertEquals(drawn.getHeight(), shipped.getHeight());
    int unlike = 0;
    for (int y = 0; y < drawn.getHeight(); y++) {
      for (int x = 0; x < drawn.getWidth(); x++) {
        unlike += drawn.getRGB(x, y) == shipped.getRGB(x, y) ? 0 : 1;
      }
    }
    // edges are smoothed a little otherwise from one Java to the next
    assertTrue(unlike < 0.02 * drawn.getWidth() * drawn.getHeight(), unlike + " pixels");
  }
}
