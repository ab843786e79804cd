package holdcurve.ui.window.job;

import holdcurve.common.input.InputException;
import holdcurve.file.JobLock;
import java.nio.file.Path;
import java.util.Optional;

/** The file that this window works on, so that a second window on it is told; idle until begun. */
final class WindowLock {
  private boolean active;
  private JobLock lock;

  /** What another window had when it was opened here, and may have changed since. */
  private Path refused;

  synchronized void begin() {
    active = true;
  }

  /**
   * Lets go of the file there was and takes another.
   *
   * @param fileOrNull null for none
   * @return false if another window has it
   */
  synchronized boolean take(Path fileOrNull) {
    if (!active) {
      return true;
    }
    if (fileOrNull != null && lock != null && lock.isFor(fileOrNull)) {
      return true;
    }
    drop();
    if (fileOrNull == null) {
      return true;
    }
    Optional<JobLock> taken = JobLock.of(fileOrNull);
    lock = taken.orElse(null);
    refused = taken.isPresent() ? null : fileOrNull;
    return taken.isPresent();
  }

  /**
   * Takes a file to write to. Where that fails, the file there was is kept.
   *
   * @throws InputException if another window has it
   */
  synchronized void need(Path file) {
    if (!active || lock != null && lock.isFor(file)) {
      return;
    }
    if (file.equals(refused)) {
      throw refusal(
          file,
          "another window has worked on this job since it was opened here",
          "save it under another name, or undo what you changed and look again");
    }
    JobLock taken =
        JobLock.of(file)
            .orElseThrow(
                () ->
                    refusal(
                        file,
                        "another window works on this job",
                        "save it under another name, or close the other window first"));
    drop();
    lock = taken;
  }

  /** Lets go for good: the window is closed, whatever is still under way. */
  synchronized void end() {
    active = false;
    drop();
  }

  synchronized void drop() {
    if (lock != null) {
      lock.close();
      lock = null;
    }
    refused = null;
  }

  private static InputException refusal(Path file, String what, String right) {
    return InputException.at(file.toString(), "", what, right);
  }
}
