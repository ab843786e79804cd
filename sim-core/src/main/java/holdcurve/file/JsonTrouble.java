package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import holdcurve.common.input.InputException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is wrong with a text that is no JSON, in words for a person who wrote it with a text editor.
 *
 * @param file the file as the user named it
 * @param text all of it
 * @param cause what the parser says
 */
record JsonTrouble(String file, String text, JsonProcessingException cause) {
  private record Said(String problem, String remedy) {}

  private static final int SHOWN = 24;
  private static final String RIGHT_FILE = "check that it is the right file";
  private static final String BACKUP = "add what is missing, or go back to the copy that ends in ~";
  private static final Pattern COMMA = Pattern.compile("(\\d+),\\s*(\\d+)$");
  private static final Pattern DUPLICATE = Pattern.compile("Duplicate field '(.*)'");
  private static final Pattern TOKEN =
      Pattern.compile("(?:Unrecognized|Non-standard) token '([^']*)'");
  private static final Pattern FOUND = Pattern.compile("Unexpected character \\('(.)'");

  InputException exception() {
    Said said = said();
    return InputException.because(file, place(), said.problem, said.remedy, cause);
  }

  private String place() {
    var at = cause.getLocation();
    return at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  private Said said() {
    String message = cause.getOriginalMessage();
    if (cause instanceof StreamConstraintsException) {
      return tooMuch(message);
    }
    String begins = text.stripLeading();
    if (!begins.startsWith("{") && !begins.startsWith("[") && !begins.startsWith("/")) {
      return new Said(
          "the file begins with '" + shortened(firstLine(begins)) + "', not with {", RIGHT_FILE);
    }
    if (cause instanceof JsonEOFException || offset() >= text.stripTrailing().length()) {
      return cutOff();
    }
    Matcher duplicate = DUPLICATE.matcher(message);
    if (duplicate.find()) {
      return new Said(
          "'" + duplicate.group(1) + "' stands there a second time", "keep one of the two");
    }
    if (message.startsWith("Trailing token")) {
      return new Said("the text goes on behind the closing bracket", "keep one { ... } in a file");
    }
    if (message.startsWith("Illegal unquoted character")) {
      return new Said(
          "a text is not closed in its line",
          "close it with \", and write \\n for a new line in it");
    }
    if (message.startsWith("Unrecognized character escape")) {
      return new Said(
          "a \\ in a text can't stand alone", "write \\\\ for it, or / in names of files");
    }
    return misplaced(message);
  }

  private static Said tooMuch(String message) {
    if (message.contains("nesting depth")) {
      return new Said(
          "brackets stand more than " + JsonFiles.MOST_DEPTH + " deep in each other", RIGHT_FILE);
    }
    return message.contains("Number")
        ? new Said("a number has more than 1000 figures", "write it shorter, such as 2.5")
        : new Said("a name or a text is too long", RIGHT_FILE);
  }

  /** Finds the bracket that is left open, by counting brackets outside of texts. */
  private Said cutOff() {
    Deque<String> open = new ArrayDeque<>();
    int line = 1;
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      line += c == '\n' ? 1 : 0;
      i += quoted && c == '\\' ? 1 : 0;
      quoted ^= c == '"';
      if (!quoted && (c == '{' || c == '[')) {
        open.push(c + " of line " + line);
      } else if (!quoted && (c == '}' || c == ']')) {
        open.poll();
      }
    }
    return open.isEmpty()
        ? new Said("the file ends too early", BACKUP)
        : new Said("the file ends before the " + open.peek() + " is closed", BACKUP);
  }

  /** Long, because it is a list of slips, one a line or two. */
  private Said misplaced(String message) {
    String before = before();
    Matcher token = TOKEN.matcher(message);
    if (token.find()) {
      return new Said(
          "'" + shortened(token.group(1)) + "' is no value",
          "write a number with a decimal point, a \"text\", true or false");
    }
    Matcher found = FOUND.matcher(message);
    String sign = found.find() ? found.group(1) : "";
    Matcher comma = COMMA.matcher(before + sign);
    if (comma.find()) {
      return new Said(
          "a number has a decimal comma",
          "write " + comma.group(1) + "." + comma.group(2) + " with a point");
    }
    if (!sign.isEmpty() && "“”„‟«»‘’'".contains(sign)) {
      return new Said("a text or a name stands in " + sign, "put it in straight quotes, \"so\"");
    }
    if (sign.equals("#")) {
      return new Said("a comment begins with #", "begin it with //");
    }
    return missing(message, sign, before);
  }

  private Said missing(String message, String sign, String before) {
    String found = "found '" + (sign.isEmpty() ? ahead() : sign) + "' ";
    if (message.contains("comma to separate")) {
      return new Said(found + "where a comma belongs", "put a comma between two entries");
    }
    if (message.contains("start field name")) {
      return new Said(found + "where a name in quotes belongs", "write entries as \"name\": value");
    }
    if (message.contains("colon to separate")) {
      return new Said(found + "where a colon belongs", "write entries as \"name\": value");
    }
    if (message.contains("Leading zeroes")) {
      return new Said("a number begins with a 0 too many", "write 5, not 05");
    }
    return sign.equals(",") || sign.equals("}") || sign.equals("]")
        ? new Said("a value is missing before '" + sign + "'", "give it, or leave the name out too")
        : new Said(
            found + "where a value belongs",
            "write a number such as 0.5, a \"text\", true or false");
  }

  private int offset() {
    long at = cause.getLocation() == null ? 0 : cause.getLocation().getCharOffset();
    return (int) Math.max(0, Math.min(text.length(), at));
  }

  /** The end of what stands before the slip. */
  private String before() {
    int from = Math.max(0, offset() - SHOWN);
    return text.substring(from, offset());
  }

  private String ahead() {
    return shortened(firstLine(text.substring(offset()).strip()));
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("");
  }

  private static String shortened(String text) {
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
  }
}
