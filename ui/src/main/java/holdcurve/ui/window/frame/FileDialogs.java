package holdcurve.ui.window.frame;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person for files. Every answer is empty if the person thought better of it. */
public interface FileDialogs {
  /**
   * Asks which job to open.
   *
   * @param near file whose folder is shown first; null for no wish
   */
  Optional<Path> chooseJob(Path near);

  /**
   * Asks where to save a job. Where nobody can be asked, nothing is saved.
   *
   * @param near file whose folder is shown first; null for no wish
   * @param name proposed
   */
  default Optional<Path> saveJob(Path near, String name) {
    return Optional.empty();
  }

  /**
   * Asks which gauge log to read.
   *
   * @param near file whose folder is shown first; null for no wish
   */
  default Optional<Path> chooseLog(Path near) {
    return Optional.empty();
  }

  /**
   * Asks which exercise to open.
   *
   * @param near file whose folder is shown first; null for no wish
   */
  default Optional<Path> chooseExercise(Path near) {
    return Optional.empty();
  }

  /** Asks in which folder to put exercises. */
  default Optional<Path> chooseExerciseFolder() {
    return Optional.empty();
  }

  /** Asks which folder with jobs the case book is to list. */
  default Optional<Path> chooseJobFolder() {
    return Optional.empty();
  }

  /**
   * Says that a plugin is a program, and asks which folder holds the plugins.
   *
   * @param near folder that is used now; null for none
   */
  default Optional<Path> choosePlugins(Path near) {
    return Optional.empty();
  }

  /**
   * Asks which sheet of a flow bench to read.
   *
   * @param near file whose folder is shown first; null for no wish
   */
  default Optional<Path> chooseBenchSheet(Path near) {
    return Optional.empty();
  }

  /**
   * Asks which file of a kind to read.
   *
   * @param near file whose folder is shown first; null for no wish
   */
  default Optional<Path> choose(FileKind kind, Path near) {
    return Optional.empty();
  }

  /**
   * Asks where to write a file of a kind. Where nobody can be asked, nothing is written.
   *
   * @param near file whose folder is shown first; null for no wish
   * @param name proposed
   */
  default Optional<Path> save(FileKind kind, Path near, String name) {
    return Optional.empty();
  }

  /** Shows a file in the program that the desktop has for it. */
  default void show(Path file) {}
}
