package holdcurve.fault.explain;

/** Text under headings, wrapped for a narrow window. */
final class Paragraphs {
  private static final int WIDTH = 78;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();

  Paragraphs heading(String heading) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    text.append(heading).append('\n');
    return this;
  }

  Paragraphs paragraph(String words) {
    int column = 0;
    for (String word : words.strip().split("\\s+")) {
      if (column > 0 && column + 1 + word.length() > WIDTH) {
        text.append('\n');
        column = 0;
      }
      String before = column == 0 ? INDENT : " ";
      text.append(before).append(word);
      column += before.length() + word.length();
    }
    text.append('\n');
    return this;
  }

  Paragraphs verbatim(String lines) {
    lines.lines().forEach(line -> text.append(INDENT).append(line).append('\n'));
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
