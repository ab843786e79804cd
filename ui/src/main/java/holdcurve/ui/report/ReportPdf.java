package holdcurve.ui.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** A page as PDF, with its one font embedded. */
public final class ReportPdf {
  private ReportPdf() {}

  /**
   * Made on a thread of its own, since the library that makes it can't be stopped: whoever is told
   * to stop doesn't wait for it.
   *
   * @param html well-formed, such as {@link ReportPage#html}; its pictures are part of it
   * @throws CancellationException if the thread is interrupted
   */
  public static byte[] of(String html) {
    FutureTask<byte[]> printing = new FutureTask<>(() -> printed(html));
    Thread printer = new Thread(printing, "holdcurve-pdf");
    printer.setDaemon(true);
    printer.start();
    try {
      return printing.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("cancelled while the PDF was made");
    } catch (ExecutionException e) {
      throw new IllegalStateException("the PDF can't be made: " + e.getCause(), e.getCause());
    }
  }

  private static byte[] printed(String html) {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new OneFont());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(OneFont::open, "Report", 400, FontStyle.NORMAL, true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    // what is in the page itself may be shown; nothing is fetched from elsewhere
    builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
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
