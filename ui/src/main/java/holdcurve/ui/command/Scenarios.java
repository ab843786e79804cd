package holdcurve.ui.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the shipped scenarios: beside the packaged program, or in the source tree. */
final class Scenarios {
  private Scenarios() {}

  /** The scenario to open when no job is named; empty if the program stands alone. */
  static Optional<Path> first() {
    return shipped("check-valve.job.json");
  }

  /** The circuit of the scenarios; empty if the program stands alone. */
  static Optional<Path> circuit() {
    return shipped("circuits/six-cylinder-return-line.circuit.json");
  }

  private static Optional<Path> shipped(String name) {
    Stream<Path> places =
        Stream.of(System.getProperty("holdcurve.home", "."), ".", "..").map(Path::of);
    return places
        .map(place -> place.resolve("scenarios").resolve(name))
        .filter(Files::isReadable)
        .map(Path::normalize)
        .findFirst();
  }
}
