package holdcurve.ui.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict.Kind;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.work.Progress;
import holdcurve.file.JobReader;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.refit.RefitStep;
import holdcurve.ui.HandMadeCheck;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reports of the shipped scenarios, with invented answers, so that none has to be ranked. */
class ReportTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final Path PICTURES = Path.of("target", "snapshots", "report");
  private static final LocalDate DAY = LocalDate.of(2026, 4, 12);

  private static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(file -> file.toString().endsWith(".job.json")).sorted().toList();
    }
  }

  private static String page(Job job) {
    return page(job, PressureUnit.BAR);
  }

  private static String page(Job job, PressureUnit unit) {
    return ReportPage.html(
        new JobReport(
            job,
            new HandMadeCheck(Kind.FAULTY).check(job, Optional.empty(), 1, Progress.NONE),
            DAY,
            unit));
  }

  private static void parse(String html) throws Exception {
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void everyScenarioPrints(Path file) throws Exception {
    Job job = JobReader.read(file);
    String html = page(job);
    parse(html);
    try (PDDocument pdf = Loader.loadPDF(ReportPdf.of(html))) {
      String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(words.contains(job.title()), words);
      for (HoldTest test : job.tests()) {
        assertTrue(words.contains(test.id()), test.id());
      }
      for (RefitStep step : job.upkeep().refit().steps()) {
        assertTrue(words.contains(step.text().substring(0, 12)), step.text());
      }
      assertTrue(words.contains("Tested by, date"));
      assertEquals(List.of(), new CutText(pdf).found());
      fontsAreEmbedded(pdf);
      noPageIsEmpty(pdf);
      draw(pdf, file.getFileName().toString().replace(".job.json", ""));
    }
  }

  /**
   * A report in psi says nothing in bar, in words, tables, drawings and parts; but for what the
   * user called the car, and the give of a hose, which has a unit of its own.
   */
  @Test
  void pressuresAreInTheUnitAskedFor() throws Exception {
    for (Path file : scenarios()) {
      Job job = JobReader.read(file);
      String html = page(job, PressureUnit.PSI);
      parse(html);
      String words =
          html.replaceAll("(?s)<style>.*?</style>", "")
              .replaceAll("<[^>]*>", " ")
              .replace(job.title(), "")
              .replace("mL/bar", "");
      List<String> inBar =
          words.lines().filter(line -> line.matches(".*\\bbar\\b.*")).map(String::strip).toList();
      assertEquals(List.of(), inBar, file.toString());
      assertTrue(words.contains(" psi"), file.toString());
    }
  }

  private static void fontsAreEmbedded(PDDocument pdf) throws IOException {
    for (PDPage page : pdf.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
      }
    }
  }

  private static void noPageIsEmpty(PDDocument pdf) throws IOException {
    PDFTextStripper one = new PDFTextStripper();
    for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
      one.setStartPage(page);
      one.setEndPage(page);
      assertTrue(one.getText(pdf).length() > 200, "page " + page);
    }
  }

  private static void draw(PDDocument pdf, String name) {
    try {
      Files.createDirectories(PICTURES);
      PDFRenderer renderer = new PDFRenderer(pdf);
      for (int i = 0; i < pdf.getNumberOfPages(); i++) {
        Path picture = PICTURES.resolve(name + "-" + (i + 1) + ".png");
        ImageIO.write(renderer.renderImageWithDPI(i, 80), "png", picture.toFile());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void whatStandsInAFileIsTextAndNoMarkup() throws Exception {
    Job job = JobReader.read(SCENARIOS.resolve("check-valve.job.json"));
    HoldTest test = job.tests().get(0);
    String hostile = "<script>alert(1)</script> & \"</style>\u0000\u0001\uFFFE <img src=x>";
    HoldTest odd =
        new HoldTest(
            hostile, test.clamped(), 5, 20, test.fuelTemperature(), test.log(), hostile, hostile);
    Job bad =
        new Job(hostile, job.circuit(), job.gauge(), List.of(odd), job.priors(), job.understood());
    String html = page(bad);
    parse(html);
    assertFalse(html.contains("<script") || html.contains("<img"), html);
    assertEquals(1, html.split("</style>", -1).length - 1);
    try (PDDocument pdf = Loader.loadPDF(ReportPdf.of(html))) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("<script>alert(1)</script> &"));
    }
  }

  @Test
  void thePageNeedsNoOtherFile() throws IOException {
    String html = page(JobReader.read(SCENARIOS.resolve("check-valve.job.json")));
    String outside = html.replace("http://www.w3.org/", "");
    assertFalse(outside.contains("http") || outside.contains("src=") || outside.contains("url("));
  }
}
