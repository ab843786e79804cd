package holdcurve.common.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Something a person gave us can't be used. The message is one sentence for that person: which
 * file, where in it, what stands there, and what would be right; or several such sentences, a line
 * each. Callers print the message and end with exit code 2; they never show a stack trace for it.
 */
public final class InputException extends RuntimeException {
  private static final int LONGEST_SOURCE = 1000;
  private static final int LONGEST_PLACE = 160;
  private static final int LONGEST_PROBLEM = 400;
  private static final int LONGEST_REMEDY = 2000;

  /** What would steer a terminal, break the line or turn the writing round. */
  private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\u2028\\u2029]+");

  /** More than these nobody puts right in one go. */
  private static final int MOST = 10;

  private final String source;

  /** The single troubles, where there are several. */
  private final transient List<InputException> parts;

  private InputException(
      String source, String message, Throwable cause, List<InputException> parts) {
    super(message, cause);
    this.source = source;
    this.parts = parts;
  }

  /**
   * Everything that is wrong, up to ten sentences, each said once.
   *
   * @param troubles at least one
   */
  public static InputException all(List<InputException> troubles) {
    Map<String, InputException> distinct = new LinkedHashMap<>();
    troubles.stream()
        .flatMap(one -> one.parts.isEmpty() ? Stream.of(one) : one.parts.stream())
        .forEach(one -> distinct.putIfAbsent(one.getMessage(), one));
    List<InputException> single = List.copyOf(distinct.values());
    if (single.size() == 1) {
      return single.get(0);
    }
    List<String> lines = new ArrayList<>(distinct.keySet());
    int more = lines.size() - MOST;
    String shown = String.join("\n", lines.subList(0, Math.min(MOST, lines.size())));
    InputException first = single.get(0);
    return new InputException(
        first.source,
        more > 0 ? shown + "\nThere are " + more + " more like these." : shown,
        first.getCause(),
        single);
  }

  /**
   * @param source the file (or "command line"), as the user named it
   * @param place line, column or path inside the source; empty when the whole source is meant
   * @param problem what is wrong, with the value found, no full stop
   * @param remedy what would be right, no full stop
   */
  public static InputException at(String source, String place, String problem, String remedy) {
    return because(source, place, problem, remedy, null);
  }

  /** Like {@link #at}, keeping the cause for the log. */
  public static InputException because(
      String source, String place, String problem, String remedy, Throwable cause) {
    String file = shown(source, LONGEST_SOURCE);
    String where = place.isEmpty() ? file : file + ", " + shown(place, LONGEST_PLACE);
    String what = shown(problem, LONGEST_PROBLEM);
    return new InputException(
        source, where + ": " + what + "; " + shown(remedy, LONGEST_REMEDY) + ".", cause, List.of());
  }

  /** Text from a file as one line of bounded length. */
  private static String shown(String text, int longest) {
    String plain = UNSEEN.matcher(text).replaceAll(" ");
    if (plain.length() <= longest) {
      return plain;
    }
    int half = longest / 2;
    return plain.substring(0, half) + "…" + plain.substring(plain.length() - half);
  }

  /** The file (or other source) that the message is about. */
  public String source() {
    return source;
  }
}
