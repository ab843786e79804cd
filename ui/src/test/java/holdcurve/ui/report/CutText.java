package holdcurve.ui.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Finds letters that reach over the edge of the printable page. */
final class CutText extends PDFTextStripper {
  /** No printer reaches nearer to the edge: 5 mm [pt]. */
  private static final double EDGE = 14;

  private final List<String> found = new ArrayList<>();

  CutText(PDDocument pdf) throws IOException {
    getText(pdf);
  }

  List<String> found() {
    return found;
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    double right = letter.getXDirAdj() + letter.getWidthDirAdj();
    double bottom = letter.getYDirAdj();
    boolean upright = letter.getDir() == 0;
    if (upright
        && (letter.getXDirAdj() < EDGE
            || right > letter.getPageWidth() - EDGE
            || bottom < EDGE
            || bottom > letter.getPageHeight() - EDGE)) {
      found.add(
          String.format(
              Locale.ROOT,
              "page %d: '%s' at %.0f, %.0f",
              getCurrentPageNo(),
              letter.getUnicode(),
              letter.getXDirAdj(),
              bottom));
    }
    super.processTextPosition(letter);
  }
}
