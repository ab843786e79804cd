package holdcurve.ui.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Well-formed HTML, piece by piece. A piece made by {@link #text} is safe whatever it holds; every
 * text from a file goes through it.
 *
 * @param code markup
 */
record Html(String code) {
  static final Html NOTHING = new Html("");

  /** Text with its markup disarmed, and without characters that XML can't hold. */
  static Html text(String plain) {
    StringBuilder safe = new StringBuilder();
    plain.codePoints().filter(Html::isAllowed).forEach(c -> safe.append(escaped(c)));
    return new Html(safe.toString());
  }

  /** Characters of XML 1.0, section 2.2. */
  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  private static String escaped(int c) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '"' -> "&quot;";
      case '\'' -> "&#39;";
      default -> Character.toString(c);
    };
  }

  /** An element; {@code tag} may carry a class after a dot, as in {@code p.verdict}. */
  static Html of(String tag, Html... inner) {
    String[] name = tag.split("\\.", 2);
    String style = name.length > 1 ? " class=\"" + name[1] + "\"" : "";
    return new Html("<" + name[0] + style + ">" + all(inner).code + "</" + name[0] + ">\n");
  }

  static Html of(String tag, String text) {
    return of(tag, text(text));
  }

  static Html all(Html... pieces) {
    return all(Arrays.asList(pieces));
  }

  static Html all(List<Html> pieces) {
    return new Html(pieces.stream().map(Html::code).collect(Collectors.joining()));
  }

  /** A table of a class, whose head is repeated on each page. */
  static Html table(String style, List<String> head, List<List<Html>> rows) {
    Html titles = all(head.stream().map(title -> of("th", title)).toList());
    List<Html> lines =
        rows.stream()
            .map(row -> of("tr", all(row.stream().map(cell -> of("td", cell)).toList())))
            .toList();
    return of("table." + style, of("thead", of("tr", titles)), of("tbody", all(lines)));
  }
}
