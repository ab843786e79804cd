package holdcurve.ui.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;

/**
 * A library that is shipped with the program.
 *
 * @param licences short names, as its makers state them; several stand for its parts
 * @param address where it comes from; empty where its makers state none
 */
public record Library(String name, String version, String licences, String address) {
  private static final int FIELDS = 4;

  /** All of them by name, as the build found them. */
  public static List<Library> all() {
    try (InputStream in = Library.class.getResourceAsStream("libraries.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(Library::of)
          .sorted(Comparator.comparing(Library::name))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Library of(String line) {
    String[] fields = line.split("\\|", FIELDS);
    return new Library(fields[0], fields[1], fields[2], fields[3]);
  }
}
