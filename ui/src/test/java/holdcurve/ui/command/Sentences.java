package holdcurve.ui.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Takes what a command printed apart into its sentences, and counts their words. */
final class Sentences {
  /** Where a printed line is broken at the latest. */
  private static final int WIDTH = 79;

  private static final Pattern BEGINS_ANEW =
      Pattern.compile("\\s*(?:[-!>]|[0-9]+\\.|[0-9]+ +|[<>]?[0-9]+ %|--|leak at|against it).*");

  /** Two blanks in a line stand between the columns of a table. */
  private static final Pattern TABLE =
      Pattern.compile("\\s*\\S.*?\\S? {2,}\\S.*|.*\\|.*|\\s*\\+-.*");

  private static final Pattern END =
      Pattern.compile("(?<=[.!?])[\"'\u201d)]?\\s+(?=[\"'\u201c(]?[A-Z0-9])");

  /** Points that end no sentence. */
  private static final Pattern SHORT =
      Pattern.compile("\\b(no|nos|No|Nos|min|max|e\\.g)\\. (?=[0-9])");

  /** Names to choose from, such as those of all faults, count as one word. */
  private static final Pattern NAMES =
      Pattern.compile("(?:[a-z_-]+, ){4,}[a-z_-]+(?: and [a-z_-]+)?");

  private Sentences() {}

  /** All sentences of a printed text, without its tables. */
  static List<String> of(String printed) {
    List<String> all = new ArrayList<>();
    paragraphs(printed).forEach(paragraph -> all.addAll(split(paragraph)));
    return all;
  }

  /** Those of an error: what is wrong, and behind a semicolon what would be right. */
  static List<String> ofError(String printed) {
    List<String> all = new ArrayList<>();
    printed
        .lines()
        .flatMap(line -> Arrays.stream(line.split("; ")))
        .forEach(s -> all.addAll(split(s)));
    return all;
  }

  /** The sentences of one paragraph. */
  static List<String> split(String paragraph) {
    String bound = SHORT.matcher(paragraph.strip()).replaceAll("$1.\u00a0");
    return Arrays.stream(END.split(bound)).map(String::strip).filter(s -> words(s) > 2).toList();
  }

  /** Words, numbers among them. */
  static int words(String sentence) {
    return (int)
        Arrays.stream(NAMES.matcher(sentence).replaceAll("names").split("\\s+|\u00a0"))
            .filter(word -> word.chars().anyMatch(Character::isLetterOrDigit))
            .count();
  }

  private static List<String> paragraphs(String printed) {
    List<String> all = new ArrayList<>();
    String last = "";
    for (String line : printed.lines().toList()) {
      if (line.isBlank() || TABLE.matcher(line.stripLeading()).matches()) {
        last = "";
        continue;
      }
      String first = line.strip().split(" ")[0];
      boolean full = last.length() <= WIDTH && last.length() + 1 + first.length() > WIDTH;
      if (!last.isEmpty() && full && !BEGINS_ANEW.matcher(line).matches()) {
        all.set(all.size() - 1, all.get(all.size() - 1) + " " + line.strip());
      } else {
        all.add(line.strip().replaceFirst("^(?:[-!>]|[0-9]+\\.) +", ""));
      }
      last = line;
    }
    return all;
  }
}
