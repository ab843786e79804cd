package holdcurve.ui.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every wish for a font with Liberation Sans (SIL Open Font License), which comes with
 * PDFBox. So the fonts of the machine are neither searched nor needed, and a report looks the same
 * everywhere.
 */
final class OneFont implements FontMapper {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final TrueTypeFont font = load();

  static InputStream open() {
    return PDDocument.class.getResourceAsStream(FILE);
  }

  private static TrueTypeFont load() {
    try (InputStream in = open()) {
      return new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String wanted, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String wanted, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String wanted, PDFontDescriptor descriptor, PDCIDSystemInfo characters) {
    return new CIDFontMapping(null, font, false);
  }
}
