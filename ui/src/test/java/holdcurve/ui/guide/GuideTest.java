package holdcurve.ui.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every chapter must keep to, whatever is in it. */
class GuideTest {
  private static final Path SOURCE =
      Path.of(System.getProperty("holdcurve.root"), "ui", "src", "main", "guide");

  @TempDir Path folder;

  @Test
  void everyPictureIsThereAndShown() throws IOException {
    try (Stream<Path> files = Files.list(SOURCE.resolve("pictures"))) {
      List<String> there = files.map(file -> "pictures/" + file.getFileName()).sorted().toList();
      assertEquals(there, GuideFiles.pictures(Guide.chapters()));
    }
  }

  @Test
  void everyCautionIsPutIn() {
    String all =
        Guide.chapters().stream()
            .map(chapter -> plain(chapter.text()))
            .collect(Collectors.joining("\n"));
    assertFalse(all.contains("{caution"), all);
    for (Caution caution : Caution.values()) {
      assertTrue(all.contains(caution.text()), caution.text());
    }
    Chapter safety = Guide.chapters().get(0);
    Cautions.general().forEach(text -> assertTrue(plain(safety.text()).contains(text), text));
  }

  @Test
  void aCautionThatThereIsNoneOfIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> Chapter.of("x", "# X\n\n{caution: no-such}\n"));
  }

  @Test
  void everyLinkLeadsToAChapter() {
    for (Chapter chapter : Guide.chapters()) {
      chapter
          .text()
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(Link link) {
                  String to = link.getDestination();
                  assertTrue(to.endsWith(".md"), to);
                  Guide.chapter(to.replaceAll("\\.md$", ""));
                }
              });
    }
  }

  @Test
  void aChapterThatThereIsNoneOfIsRefusedWithTheNamesOfAll() {
    String said = assertThrows(InputException.class, () -> Guide.chapter("brakes")).getMessage();
    assertTrue(said.contains("safety"), said);
  }

  /** The house rule for texts: 22 words at most, 11 on average. */
  @Test
  void sentencesAreShort() {
    int words = 0;
    int sentences = 0;
    for (Chapter chapter : Guide.chapters()) {
      for (String sentence : sentences(chapter)) {
        int count = sentence.trim().split("\\s+").length;
        assertTrue(count <= 22, () -> chapter.id() + ": " + sentence);
        words += count;
        sentences++;
      }
    }
    assertTrue(words <= 11 * sentences, words + " words in " + sentences + " sentences");
  }

  private static List<String> sentences(Chapter chapter) {
    StringBuilder all = new StringBuilder();
    chapter
        .text()
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Paragraph paragraph) {
                all.append(plain(paragraph)).append("\n");
              }

              @Override
              public void visit(Heading heading) {}
            });
    return Stream.of(all.toString().split("[.:?!](?=\\s)|\n"))
        .filter(sentence -> !sentence.isBlank())
        .toList();
  }

  private static String plain(Node node) {
    return TextContentRenderer.builder().build().render(node).replaceAll("\\s+", " ");
  }

  @Test
  void thePdfHasTwelveToTwentyPagesWithEveryChapter() throws IOException {
    Path pdf = folder.resolve("guide.pdf");
    GuideFiles.writePdf(pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      int pages = document.getNumberOfPages();
      assertTrue(pages >= 12 && pages <= 20, pages + " pages");
      String text = new PDFTextStripper().getText(document);
      Guide.chapters().forEach(one -> assertTrue(text.contains(one.title()), one.title()));
      assertEquals(GuideFiles.pictures(Guide.chapters()).size(), images(document));
    }
  }

  private static int images(PDDocument document) throws IOException {
    int images = 0;
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getXObjectNames()) {
        images += page.getResources().isImageXObject(name) ? 1 : 0;
      }
    }
    return images;
  }

  @Test
  void thePageIsWellFormedAndFindsItsPicturesBesideIt() throws Exception {
    Path page = GuideFiles.writeHtml(folder.resolve("made"));
    var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(page.toFile());
    var pictures = document.getElementsByTagName("img");
    assertTrue(pictures.getLength() > 0);
    for (int i = 0; i < pictures.getLength(); i++) {
      String name = pictures.item(i).getAttributes().getNamedItem("src").getNodeValue();
      assertTrue(Files.exists(page.resolveSibling(name)), name);
    }
    assertTrue(document.getElementsByTagName("svg").getLength() > 10);
  }
}
