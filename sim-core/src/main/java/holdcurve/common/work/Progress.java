package holdcurve.common.work;

/** Where long work says how far it is, and asks whether to go on. Called from worker threads. */
public interface Progress {
  /** Nobody watches. */
  Progress NONE =
      new Progress() {
        @Override
        public void at(double share, String what) {}

        @Override
        public boolean isCancelled() {
          return false;
        }
      };

  /**
   * @param share of the work that is done [-], 0 to 1
   * @param what is being worked on, in plain words
   */
  void at(double share, String what);

  /**
   * Whether the work should stop soon; it then ends with a {@link
   * java.util.concurrent.CancellationException}. It ends at once where its thread is interrupted
   * too, see {@link holdcurve.common.input.Cancellation}.
   */
  boolean isCancelled();
}
