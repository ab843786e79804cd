package holdcurve.ui.report;

import holdcurve.common.input.InputException;
import holdcurve.file.JobWriter;
import holdcurve.file.SafeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where a report goes.
 *
 * @param html the page
 * @param pdf the same to print
 */
public record ReportFiles(Path html, Path pdf) {
  /**
   * Named after the job.
   *
   * @param folder where; made if it isn't there. Empty for the folder of the job
   * @throws InputException if the folder can't be made
   */
  public static ReportFiles beside(Path job, Optional<Path> folder) {
    String name = job.getFileName().toString();
    String stem =
        name.endsWith(JobWriter.ENDING)
            ? name.substring(0, name.length() - JobWriter.ENDING.length())
            : name;
    Path place = folder.map(ReportFiles::made).orElse(job.resolveSibling(""));
    return new ReportFiles(
        place.resolve(stem + ".report.html"), place.resolve(stem + ".report.pdf"));
  }

  private static Path made(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw InputException.because(
          folder.toString(), "", "the folder can't be made", "name one that may be written to", e);
    }
  }

  /** Writes both, each in one step with a backup of what stood there. */
  public void write(JobReport report) {
    String page = ReportPage.html(report);
    byte[] printed = ReportPdf.of(page);
    SafeFile.write(html, page);
    SafeFile.write(pdf, printed);
  }
}
