package holdcurve.ui.window.job;

/** Failures nobody foresaw, in words. */
final class FailureText {
  private FailureText() {}

  /** The message of a failure, or at least its kind, with a full stop. */
  static String plain(Throwable e) {
    String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return message.endsWith(".") ? message : message + ".";
  }
}
