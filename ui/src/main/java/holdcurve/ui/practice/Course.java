package holdcurve.ui.practice;

import holdcurve.common.text.Titles;
import holdcurve.file.ExerciseReader;
import holdcurve.training.Exercise;
import holdcurve.ui.scenario.Scenarios;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The shipped exercises in the order in which to take them: from easy to nasty. */
public final class Course {
  private static final List<String> ORDER =
      List.of(
          "long-cranking",
          "smell-after-parking",
          "fresh-from-the-bench",
          "half-a-bar",
          "second-opinion",
          "nervous-owner",
          "cold-morning",
          "at-the-gauge",
          "thin-hose",
          "barn-find",
          "spare-parts-car",
          "weekend-car",
          "two-bills",
          "everything-rebuilt");

  /**
   * One exercise of it.
   *
   * @param name short, for the command line
   */
  public record Lesson(String name, Path file, String title, int level, String story) {}

  private Course() {}

  /** All that are shipped with the program; none if it stands alone. */
  public static List<Lesson> lessons() {
    return ORDER.stream().map(Course::lesson).flatMap(Optional::stream).toList();
  }

  private static Optional<Lesson> lesson(String name) {
    return Scenarios.exercise(name).map(file -> lesson(name, file));
  }

  private static Lesson lesson(String name, Path file) {
    Exercise exercise = ExerciseReader.read(file);
    return new Lesson(
        name, file, Titles.shown(exercise.title()), exercise.level(), exercise.story());
  }
}
