package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.report.ReportPdf;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import org.junit.jupiter.api.Test;

/** Even a page that asks for things from elsewhere is printed without asking for them. */
class ReportReachTest {
  private static final int PATIENCE_MS = 300;

  @Test
  void thePrinterFetchesNothing() throws IOException {
    try (ServerSocket listening = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      String there = "http://localhost:" + listening.getLocalPort();
      String page =
          """
          <!DOCTYPE html>
          <html xmlns="http://www.w3.org/1999/xhtml"><head><title>x</title>
          <link rel="stylesheet" href="%1$s/a.css"/>
          <style>@import url(%1$s/b.css); body { font-family: Report; }
          p { background: url(%1$s/c.png) }</style></head>
          <body><p>Words</p><img src="%1$s/d.png" alt="d"/>
          <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
          width="50" height="50"><image xlink:href="%1$s/e.png" width="9" height="9"/>
          <use xlink:href="%1$s/f.svg#g"/></svg></body></html>
          """
              .formatted(there);
      String typed = page.replace("html>\n<html", "html SYSTEM \"" + there + "/g.dtd\">\n<html");
      assertTrue(ReportPdf.of(page).length > 0);
      assertTrue(ReportPdf.of(typed).length > 0);
      listening.setSoTimeout(PATIENCE_MS);
      assertThrows(SocketTimeoutException.class, listening::accept);
    }
  }
}
