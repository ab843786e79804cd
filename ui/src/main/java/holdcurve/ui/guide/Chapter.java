package holdcurve.ui.guide;

import holdcurve.bench.droptest.FiringSteps;
import holdcurve.common.caution.Cautions;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/**
 * A chapter of the guide. Bold words in it are words that the window shows, such as the name of a
 * button; a quotation is a caution.
 *
 * @param id short name, such as {@code drop-test}
 * @param title its heading
 * @param text all of it, heading included
 */
public record Chapter(String id, String title, Node text) {
  /** A paragraph of its own; the words come from the one source of cautions. */
  private static final Pattern CAUTION = Pattern.compile("\\{caution: ([a-z, -]+)}");

  /** Stands for the steps of a drop test, which the window shows too. */
  private static final String FIRING = "{steps: drop-test}";

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  /**
   * @param markdown a text that begins with a heading
   * @throws IllegalArgumentException if it names a caution that there is none of
   */
  static Chapter of(String id, String markdown) {
    Node text = PARSER.parse(markdown.replace(FIRING, steps()));
    text.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Paragraph paragraph) {
            if (paragraph.getFirstChild() instanceof Text only && only.getNext() == null) {
              Matcher caution = CAUTION.matcher(only.getLiteral());
              if (caution.matches()) {
                put(caution.group(1).split(", *"), paragraph);
              }
            }
          }
        });
    if (!(text.getFirstChild() instanceof Heading heading)) {
      throw new IllegalArgumentException("the chapter " + id + " begins with no heading");
    }
    return new Chapter(id, ((Text) heading.getFirstChild()).getLiteral(), text);
  }

  private static String steps() {
    StringBuilder list = new StringBuilder();
    FiringSteps.all().forEach(step -> list.append("1. ").append(step).append('\n'));
    return list.toString();
  }

  private static void put(String[] cautions, Paragraph place) {
    BlockQuote quotation = new BlockQuote();
    Paragraph words = new Paragraph();
    words.appendChild(
        new Text(String.join(" ", Arrays.stream(cautions).map(Cautions::text).toList())));
    quotation.appendChild(words);
    place.insertBefore(quotation);
    place.unlink();
  }
}
