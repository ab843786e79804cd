package holdcurve.ui.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said of a command line that can't be understood. */
final class WrongUse {
  /** Two slips in a word of four to eleven letters still leave it known. */
  private static final int SLIPS = 2;

  private static final List<String> FILES = List.of(".json", ".csv", ".txt");

  private static final Map<String, String> NUMBERS =
      Map.of(
          "is not a long", "is not a whole number",
          "is not an int", "is not a whole number",
          "is not a double", "is not a number; write it with figures and a decimal point");

  private static final Pattern TOO_MANY =
      Pattern.compile("Unmatched argument at index [0-9]+: (.*)");

  private static final Pattern NO_DATE =
      Pattern.compile("(.*: )cannot convert ('.*') to class java\\.time\\.LocalDate.*");

  /** How the parser begins what it says of a choice that wasn't made. */
  private static final String NONE_OF = "Error: Missing required argument (specify one of these): ";

  private WrongUse() {}

  /**
   * Says what is wrong and what would be right.
   *
   * @return the exit code
   */
  static int tell(ParameterException e) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    Optional<String> strange = strangeCommand(e);
    if (strange.isPresent()) {
      err.println(instead(strange.get(), command));
    } else {
      err.println(plain(e.getMessage()));
      afterFlag(e).ifPresent(err::println);
      if (!UnmatchedArgumentException.printSuggestions(e, err)) {
        err.println(
            "'" + command.getCommandSpec().qualifiedName() + " --help' says how it is used.");
      }
    }
    err.flush();
    return HoldcurveCommand.BAD_INPUT;
  }

  /** A word too many is often meant as the value of an option that takes none. */
  private static Optional<String> afterFlag(ParameterException e) {
    if (!(e instanceof UnmatchedArgumentException)) {
      return Optional.empty();
    }
    List<String> words = e.getCommandLine().getParseResult().originalArgs();
    for (int i = 0; i + 1 < words.size(); i++) {
      OptionSpec option = e.getCommandLine().getCommandSpec().findOption(words.get(i));
      String next = words.get(i + 1);
      if (option != null
          && option.arity().max() == 0
          && !next.startsWith("-")
          && FILES.stream().noneMatch(next::endsWith)) {
        return Optional.of("'" + words.get(i) + "' takes no value. Leave out '" + next + "'.");
      }
    }
    return Optional.empty();
  }

  /** The word that stands where a command belongs, if it is none. */
  private static Optional<String> strangeCommand(ParameterException e) {
    boolean top = !e.getCommandLine().getSubcommands().isEmpty();
    return top && e instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()
        ? unmatched.getUnmatched().stream().findFirst()
        : Optional.empty();
  }

  private static String instead(String word, CommandLine top) {
    if (FILES.stream().anyMatch(word::endsWith)) {
      String such = top.getParent() == null ? " rank " : " show ";
      return "'"
          + word
          + "' is the name of a file; say first what to do with it, such as: "
          + top.getCommandSpec().qualifiedName()
          + such
          + word;
    }
    return "There is no command '"
        + word
        + "'"
        + nearest(word, top).map(name -> "; did you mean '" + name + "'?").orElse(".")
        + " '"
        + "holdcurve help"
        + (top.getParent() == null ? "" : " " + top.getCommandName())
        + "' lists them.";
  }

  private static Optional<String> nearest(String word, CommandLine top) {
    Map<Integer, String> bySlips = new TreeMap<>();
    top.getSubcommands()
        .keySet()
        .forEach(
            name -> {
              boolean begun = word.length() > SLIPS && name.startsWith(word);
              bySlips.putIfAbsent(begun ? 1 : slips(word, name), name);
            });
    return bySlips.entrySet().stream()
        .findFirst()
        .filter(best -> best.getKey() <= SLIPS)
        .map(Map.Entry::getValue);
  }

  /** Letters to put in, take out or change to make one word of the other (Levenshtein). */
  private static int slips(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }

  private static String plain(String said) {
    String message =
        said.replace(NONE_OF, "One of these is missing: ").replaceFirst("^Error: ", "");
    Matcher more = TOO_MANY.matcher(message);
    if (more.matches()) {
      return more.group(1) + " is one word too many.";
    }
    Matcher date = NO_DATE.matcher(message);
    if (date.matches()) {
      return date.group(1)
          + date.group(2)
          + " is no date; write year, month and day as 2026-04-11.";
    }
    for (Map.Entry<String, String> wording : NUMBERS.entrySet()) {
      if (message.endsWith(wording.getKey())) {
        return message.replace(wording.getKey(), wording.getValue()) + ".";
      }
    }
    return message;
  }
}
