package holdcurve.ui.window;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/** How long a person waited since the program was started: for the window, and for an answer. */
final class StartTimes {
  private final Instant start =
      ProcessHandle.current().info().startInstant().orElseGet(Instant::now);
  private Duration shown = Duration.ZERO;
  private Duration answered = Duration.ZERO;

  void shown() {
    shown = since();
  }

  /**
   * @param isAnswer whether there is one; the first counts
   */
  void answered(boolean isAnswer) {
    if (isAnswer && answered.isZero()) {
      answered = since();
    }
  }

  private Duration since() {
    return Duration.between(start, Instant.now());
  }

  private static double seconds(Duration time) {
    return time.toMillis() / 1e3;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "Window after %.1f s, answer after %.1f s.",
        seconds(shown),
        seconds(answered));
  }
}
