package holdcurve.fault.explain;

import holdcurve.common.text.WrappedText;

/** Text under headings, wrapped for a narrow window. */
final class Paragraphs {
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
    text.append(WrappedText.of(INDENT, words.strip().replaceAll("\\s+", " ")));
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
