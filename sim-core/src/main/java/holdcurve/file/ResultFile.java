package holdcurve.file;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes what the program has worked out, over an earlier result of the same kind but never over
 * anything else: a slip of the hand must not put a ranking where a job or an evening's readings
 * were.
 */
public final class ResultFile {
  /** What the first line or the first entry says of itself. */
  private static final Pattern KIND =
      Pattern.compile("\\A(?:\\{\\s*\"format\"\\s*:\\s*\"|# )(holdcurve-[a-z-]+)/");

  private static final int LOOKED_AT = 200;

  private ResultFile() {}

  /**
   * @param text begins with its format
   * @throws InputException if something else stands there, or it can't be written
   */
  public static void write(Path file, String text) {
    String there = beginning(file);
    if (!there.isBlank() && !kind(text).equals(kind(there))) {
      String what = kind(there).isEmpty() ? "something else" : "a " + kind(there);
      throw InputException.at(
          file.toString(),
          "",
          what + " stands there, which a result must not replace",
          "choose another name");
    }
    SafeFile.write(file, text);
  }

  private static String kind(String text) {
    Matcher matcher = KIND.matcher(text);
    return matcher.find() ? matcher.group(1) : "";
  }

  /** Empty where there is no file; what can't be read is left to the writing to complain of. */
  private static String beginning(Path file) {
    if (!Files.isRegularFile(file)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(LOOKED_AT), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }
}
