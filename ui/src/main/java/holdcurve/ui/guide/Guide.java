package holdcurve.ui.guide;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The chapters of the guide, as they come with the program. */
public final class Guide {
  private static final List<String> IDS =
      List.of(
          "safety",
          "first-hold",
          "clamps",
          "answer",
          "next-test",
          "ordering",
          "proving",
          "bench-sheet",
          "drop-test",
          "cases",
          "practice",
          "logs",
          "commands",
          "words");

  private static final String START = "first-hold";

  /** Which chapter is about which page of the window. */
  private static final Map<String, String> PAGES =
      Map.of(
          "Circuit", START,
          "Hold tests", START,
          "Suspects", "answer",
          "Bench sheet", "bench-sheet",
          "Drop test in the car", "drop-test",
          "What if", "ordering",
          "Repair check", "proving",
          "Cases", "cases",
          "Practice", "practice");

  private Guide() {}

  /** In the order of reading. */
  public static List<Chapter> chapters() {
    return IDS.stream().map(Guide::read).toList();
  }

  /**
   * @param id such as {@code clamps}
   * @throws InputException if there is no such chapter
   */
  public static Chapter chapter(String id) {
    if (!IDS.contains(id)) {
      throw InputException.at(
          "command line", id, "the guide has no such chapter", "take " + String.join(", ", IDS));
    }
    return read(id);
  }

  /**
   * Id of the chapter about a page of the window.
   *
   * @param title of the page; of one that is not there yet, where a job is begun
   */
  public static String forPage(String title) {
    return PAGES.getOrDefault(title, START);
  }

  private static Chapter read(String id) {
    return Chapter.of(id, new String(resource(id + ".md"), StandardCharsets.UTF_8));
  }

  /**
   * What a chapter names, such as a picture.
   *
   * @throws IllegalArgumentException if it isn't there
   */
  public static byte[] resource(String name) {
    try (InputStream in = Guide.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("the guide has no " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
