package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.ExerciseReader;
import holdcurve.file.ExerciseWriter;
import holdcurve.training.Exercise;
import holdcurve.training.RandomExercises;
import holdcurve.training.TrainingCar;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** Options that write exercises for a class instead of practising one. */
final class ClassFiles {
  @Option(
      names = "--make",
      paramLabel = "COUNT",
      description = "Write so many exercises for a class instead, answers sealed.")
  private Integer make;

  @Option(
      names = "--seal",
      description =
          "Write an exercise of your own to --out with its answer sealed, for handing out.")
  private boolean seal;

  @Option(names = "--out", paramLabel = "FOLDER", description = "Where --make and --seal write.")
  private Path folder;

  /** Whether exercises are to be written instead of practised. */
  boolean isAsked() {
    return make != null || seal;
  }

  /**
   * Writes what was asked for; says what it did.
   *
   * @param file the exercise named, or null
   * @param random makes up exercises on a circuit; asked only where they are wanted
   * @param catalogue faults that an exercise may hide
   * @throws InputException if an option can't be used
   */
  String write(
      Path file,
      Supplier<RandomExercises> random,
      Path circuit,
      int level,
      long seed,
      FaultCatalogue catalogue) {
    return make != null ? makeClass(random.get(), circuit, level, seed) : sealFile(file, catalogue);
  }

  /** Writes made-up exercises; says what it did. */
  private String makeClass(RandomExercises random, Path circuit, int level, long seed) {
    if (make < 1 || make > 500) {
      throw InputException.at(
          "command line", "--make " + make, "that many can't be made", "give 1 to 500");
    }
    for (int i = 0; i < make; i++) {
      Exercise exercise = random.of(level, seed + i);
      String stem = exercise.title().toLowerCase(Locale.ROOT).replace(' ', '-');
      ExerciseWriter.write(folder(), stem + ExerciseWriter.ENDING, exercise, circuit);
    }
    return make + " exercises written to " + folder + ".";
  }

  /** Seals an exercise; says what it did. */
  private String sealFile(Path file, FaultCatalogue catalogue) {
    if (file == null) {
      throw InputException.at("command line", "--seal", "no exercise is named", "name its file");
    }
    if (folder().toAbsolutePath().equals(file.toAbsolutePath().getParent())) {
      throw InputException.at(
          "command line",
          "--out " + folder,
          "the open exercise stands there",
          "name another folder, for what is handed out");
    }
    Exercise exercise = ExerciseReader.read(file);
    TrainingCar.requirePlausible(exercise, catalogue);
    ExerciseWriter.write(
        folder(), file.getFileName().toString(), exercise, ExerciseReader.circuitFile(file));
    return "Sealed into " + folder + ".";
  }

  private Path folder() {
    if (folder == null) {
      throw InputException.at(
          "command line", "--out", "no folder is named", "say where to write with --out");
    }
    return folder;
  }
}
