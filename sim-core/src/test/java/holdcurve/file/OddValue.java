package holdcurve.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Puts an odd value in place of one of the values of a JSON text or of a table. */
final class OddValue {
  static final List<String> ALL =
      List.of(
          "null",
          "true",
          "0",
          "-1",
          "1e308",
          "1e400",
          "-1e-300",
          "0.000001",
          "999999999999",
          "4294967297",
          "NaN",
          "\"\"",
          "\" \"",
          "\"NaN\"",
          "\"2,5\"",
          "\"=1+1\"",
          "\"..\"",
          "\"../..\"",
          "\"/\"",
          "\".\"",
          "\"\\u0000\"",
          "\"a\\u0000b\"",
          "\"\\ud800\"",
          "\"\\u202e\"",
          "\"9999-12-31\"",
          "\"+999999999-12-31\"",
          "[]",
          "{}",
          "[[[]]]",
          "[1]",
          "{\"a\":1}",
          "2,5",
          "2.5 bar",
          "",
          "-");

  private static final Pattern VALUE =
      Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"|[-+0-9.eE]+|true|false|[\\p{L}][\\p{L}0-9_-]*");

  private OddValue() {}

  static String put(String text, double at, String odd) {
    List<MatchResult> values = new ArrayList<>(VALUE.matcher(text).results().toList());
    if (values.isEmpty()) {
      return odd;
    }
    MatchResult value = values.get((int) (at * (values.size() - 1)));
    return text.substring(0, value.start()) + odd + text.substring(value.end());
  }
}
