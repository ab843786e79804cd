package holdcurve.ui.window.job;

import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.nio.file.Path;

/** Keeps the job that is worked on safe from a crash. Called on the thread of the screen. */
public interface Keeper {
  /** Keeps nothing. */
  Keeper NONE =
      new Keeper() {
        @Override
        public void turnedTo(Object sitting) {}

        @Override
        public void changed(Job job, Path fileOrNull) {}

        @Override
        public void read(String test, Reading reading) {}

        @Override
        public void saved(Job job, Path file) {}
      };

  /**
   * From now on it is about another job. What was kept of the one before stays, for the next start
   * or until it is turned to again.
   *
   * @param sitting the same for the same job
   */
  void turnedTo(Object sitting);

  /**
   * The job was begun, opened or changed in any way but by one more reading.
   *
   * @param fileOrNull where it was read from or saved to
   */
  void changed(Job job, Path fileOrNull);

  /**
   * One more reading was taken. It is on its way to the disk when this returns.
   *
   * @param test id of the hold test
   */
  void read(String test, Reading reading);

  /** The job now stands in its file as it is. */
  void saved(Job job, Path file);
}
