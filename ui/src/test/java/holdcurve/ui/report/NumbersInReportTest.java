package holdcurve.ui.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict.Kind;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.work.Progress;
import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import holdcurve.ui.HandMadeCheck;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Walks the text of every scenario's report: each number has a unit, and no more digits than a
 * gauge gives.
 */
class NumbersInReportTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final Set<String> BLOCKS =
      Set.of("p", "td", "th", "li", "h1", "h2", "h3", "div", "span", "dd", "dt", "caption");
  private static final String NUMBER = "[+−-]?\\d+(?:\\.\\d+)?";

  /** Units, and words that say what is counted. */
  private static final String UNIT =
      "(?:%|bar|mL/min|mL/bar|mL|µL|L/min|mm|cm|m|min|s|ms|h|K|°C|kPa|psi|Ω|cylinders?|injectors?|readings?|"
          + "tests?|holds?|drops?|places?|minutes?|times?|steps?|degrees?|of|parts?|joints?)";

  /** One number, a range, or a value with its range, before or after its unit. */
  private static final Pattern QUANTITY =
      Pattern.compile(
          NUMBER
              + "(?:(?:\\s*(?:to|±|–|and|×|or)\\s*|\\s*\\()"
              + NUMBER
              + ")*\\)?\\s*"
              + UNIT
              + "(?![A-Za-z/])(?:\\s*\\((?:90 % range )?"
              + NUMBER
              + " to "
              + NUMBER
              + "\\))?");

  /** What has no unit: days, times of day, numbers of things, DIN 72552 terminals, classes. */
  private static final Pattern NAME =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}|\\d+:\\d{2}(?:\\.\\d)?|[A-Za-z_-]+\\d[\\w-]*"
              + "|no\\. \\d+|class [\\d.]+|count \\d+|\\d+ other|terminal 30|to 87");

  /** Four figures are what the finest gauge here is read to. */
  private static final Pattern TOO_FINE =
      Pattern.compile("\\d+\\.\\d{4,}|\\d{2,}\\.\\d{3,}|\\d{6,}");

  private static final Pattern DIGIT = Pattern.compile("\\d");

  private static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(file -> file.toString().endsWith(".job.json")).sorted().toList();
    }
  }

  private static Element page(Path file) throws Exception {
    Job job = JobReader.read(file);
    String html =
        ReportPage.html(
            new JobReport(
                job,
                new HandMadeCheck(Kind.FAULTY).check(job, Optional.empty(), 1, Progress.NONE),
                LocalDate.of(2026, 4, 12),
                PressureUnit.BAR));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)))
        .getDocumentElement();
  }

  private static List<Element> leaves(Element root) {
    List<Element> leaves = new ArrayList<>();
    NodeList all = root.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (BLOCKS.contains(element.getTagName()) && !hasBlocks(element)) {
        leaves.add(element);
      }
    }
    return leaves;
  }

  private static boolean hasBlocks(Element element) {
    NodeList inside = element.getElementsByTagName("*");
    for (int i = 0; i < inside.getLength(); i++) {
      if (BLOCKS.contains(((Element) inside.item(i)).getTagName())) {
        return true;
      }
    }
    return false;
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void everyNumberHasAUnitAndSensibleDigits(Path file) throws Exception {
    List<String> bare = new ArrayList<>();
    List<String> fine = new ArrayList<>();
    int numbers = 0;
    for (Element leaf : leaves(page(file))) {
      String text = leaf.getTextContent().replaceAll("\\s+", " ").strip();
      String quantities = NAME.matcher(text).replaceAll("_");
      numbers += (int) QUANTITY.matcher(quantities).results().count();
      boolean free = leaf.getTagName().equals("h1") || isTimeMark(leaf, text) || isUnderUnit(leaf);
      if (!free && DIGIT.matcher(QUANTITY.matcher(quantities).replaceAll("_")).find()) {
        bare.add(text);
      }
      if (TOO_FINE.matcher(text).find()) {
        fine.add(text);
      }
    }
    assertEquals(List.of(), bare, "numbers without a unit");
    assertEquals(List.of(), fine, "too many digits");
    assertTrue(numbers > 20, numbers + " numbers");
  }

  /** A cell of a column that is headed by its unit alone. */
  private static boolean isUnderUnit(Element leaf) {
    if (!leaf.getTagName().equals("td")) {
      return false;
    }
    int column = 0;
    for (Node before = leaf.getPreviousSibling(); before != null; ) {
      column += before instanceof Element ? 1 : 0;
      before = before.getPreviousSibling();
    }
    Node table = leaf.getParentNode();
    while (!table.getNodeName().equals("table")) {
      table = table.getParentNode();
    }
    NodeList heads = ((Element) table).getElementsByTagName("th");
    return column < heads.getLength()
        && heads.item(column).getTextContent().strip().matches("bar|mL");
  }

  /** Marks of a time axis, whose title has the unit. */
  private static boolean isTimeMark(Element leaf, String text) {
    Element plot = (Element) leaf.getParentNode();
    return plot.getAttribute("class").contains("plot")
        && text.matches("\\d+")
        && plot.getTextContent().contains("minutes after the pump stopped");
  }
}
