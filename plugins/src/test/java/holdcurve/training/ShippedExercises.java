package holdcurve.training;

import holdcurve.file.ExerciseReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The exercises in the scenarios folder. */
final class ShippedExercises {
  static final Path FOLDER =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", "exercises");

  private ShippedExercises() {}

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(file -> file.toString().endsWith(".exercise.json")).sorted().toList();
    }
  }

  static Exercise read(Path file) {
    return ExerciseReader.read(file);
  }
}
