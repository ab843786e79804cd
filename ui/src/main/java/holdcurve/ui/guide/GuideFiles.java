package holdcurve.ui.guide;

import holdcurve.common.input.InputException;
import holdcurve.file.SafeFile;
import holdcurve.ui.report.ReportPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.TreeSet;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;

/** The guide as files: HTML for a browser, PDF for a printer. */
public final class GuideFiles {
  private static final String PDF = "holdcurve-guide.pdf";

  private GuideFiles() {}

  /**
   * The build calls it, for the guide beside the packaged program.
   *
   * @param arguments the folder to write both to
   */
  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    writeHtml(folder);
    writePdf(folder.resolve(PDF));
  }

  /**
   * Writes the page and its pictures.
   *
   * @param folder made if it isn't there
   * @return the page
   * @throws InputException if it can't be written to
   */
  public static Path writeHtml(Path folder) {
    List<Chapter> chapters = Guide.chapters();
    made(folder.resolve("pictures"));
    for (String name : pictures(chapters)) {
      replace(folder.resolve(name), Guide.resource(name));
    }
    Path page = folder.resolve("index.html");
    SafeFile.write(page, GuidePage.html(chapters, name -> name));
    return page;
  }

  /** A picture that stands there already needs no backup. */
  private static void replace(Path file, byte[] content) {
    try {
      if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), content)) {
        return;
      }
    } catch (IOException e) {
      throw InputException.because(
          file.toString(), "", "the file can't be read", "name another folder", e);
    }
    SafeFile.write(file, content);
  }

  private static void made(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw InputException.because(
          folder.toString(), "", "the folder can't be made", "name one that may be written to", e);
    }
  }

  /**
   * Writes it for a printer, all in one file.
   *
   * @throws InputException if it can't be written
   */
  public static void writePdf(Path file) {
    SafeFile.write(file, ReportPdf.of(GuidePage.html(Guide.chapters(), GuideFiles::embedded)));
  }

  private static String embedded(String picture) {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(Guide.resource(picture));
  }

  /** Names of the pictures that chapters show, each once. */
  static List<String> pictures(List<Chapter> chapters) {
    TreeSet<String> names = new TreeSet<>();
    for (Chapter chapter : chapters) {
      chapter
          .text()
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(Image image) {
                  if (PartSymbol.at(image.getDestination()).isEmpty()) {
                    names.add(image.getDestination());
                  }
                }
              });
    }
    return new ArrayList<>(names);
  }
}
