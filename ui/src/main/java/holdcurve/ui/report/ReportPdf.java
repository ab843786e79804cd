package holdcurve.ui.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** The report page as PDF, with its one font embedded. */
public final class ReportPdf {
  private ReportPdf() {}

  /**
   * @param html of {@link ReportPage#html}
   */
  public static byte[] of(String html) {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new OneFont());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(OneFont::open, "Report", 400, FontStyle.NORMAL, true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useUriResolver((base, uri) -> null);
    builder.withHtmlContent(html, null);
    builder.toStream(out);
    try {
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
