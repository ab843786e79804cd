package holdcurve.ui.scenario;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the shipped scenarios: beside the packaged program, or in the source tree. */
public final class Scenarios {
  private static final String HOME = "holdcurve.home";
  private static final String FIRST = "check-valve.job.json";

  private Scenarios() {}

  /** Whether the program runs from where it was installed, not from its source tree. */
  public static boolean installed() {
    return System.getProperty(HOME) != null;
  }

  /** The job to show what an answer looks like; empty if the program stands alone. */
  public static Optional<Path> first() {
    return shipped(FIRST);
  }

  /** The circuit of the scenarios; empty if the program stands alone. */
  public static Optional<Path> circuit() {
    return shipped("circuits/six-cylinder-return-line.circuit.json");
  }

  /** An exercise by its short name, such as {@code long-cranking}. */
  public static Optional<Path> exercise(String name) {
    return shipped("exercises/" + name + ".exercise.json");
  }

  /** Whether a file is one of the program's own. */
  public static boolean isShipped(Path file) {
    Path where = file.toAbsolutePath().normalize();
    return folders()
        .filter(folder -> Files.exists(folder.resolve(FIRST)))
        .anyMatch(folder -> where.startsWith(folder.toAbsolutePath().normalize()));
  }

  private static Optional<Path> shipped(String name) {
    return folders()
        .map(folder -> folder.resolve(name))
        .filter(Files::isReadable)
        .map(Path::normalize)
        .findFirst();
  }

  private static Stream<Path> folders() {
    return Stream.of(System.getProperty(HOME, "."), ".", "..")
        .map(place -> Path.of(place).resolve("scenarios"));
  }
}
