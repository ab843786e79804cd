package holdcurve.file;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Files that a file names, relative to its own folder. */
final class Siblings {
  private Siblings() {}

  /**
   * A file named in another one. A name can't climb out of the folders it lies in by more than the
   * shipped layout needs.
   */
  static Path of(Path file, JsonPlace place, String remedy) {
    String name = place.text(remedy);
    Path named = named(name, place);
    if (named.isAbsolute()) {
      throw place.bad("'" + name + "' is an absolute path", "write it relative to this file");
    }
    Path folder = folder(file);
    if (!isInReach(folder, folder.resolve(named).normalize())) {
      throw place.bad(
          "'" + name + "' leads out of the folder of this file",
          "keep the file beside it or in a folder beside it");
    }
    Path given = file.getParent();
    Path found = given == null ? named : given.resolve(named).normalize();
    if (!Files.exists(found)) {
      throw place.bad("there is no file '" + name + "'", "check the name and the folder");
    }
    if (Files.isDirectory(found)) {
      throw place.bad("'" + name + "' is a folder", "name a file inside it");
    }
    return found;
  }

  private static Path folder(Path file) {
    return file.toAbsolutePath().normalize().getParent();
  }

  private static boolean isInReach(Path folder, Path target) {
    Path highest = folder.getParent() == null ? folder : folder.getParent();
    return target.startsWith(highest);
  }

  /** How a file can name another one; empty where that lies too far off. */
  static Optional<String> name(Path file, Path other) {
    Path folder = folder(file);
    Path target = other.toAbsolutePath().normalize();
    return isInReach(folder, target)
        ? Optional.of(folder.relativize(target).toString().replace('\\', '/'))
        : Optional.empty();
  }

  private static Path named(String name, JsonPlace place) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw place.bad(
          "'" + name + "' can't be the name of a file", "use letters, figures, '-' and '.'");
    }
  }
}
