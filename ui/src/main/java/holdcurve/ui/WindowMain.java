package holdcurve.ui;

import java.util.stream.Stream;

/** Starts the window on the file that a desktop hands over, or on none. */
public final class WindowMain {
  private WindowMain() {}

  /** Exits with the window's exit code. */
  public static void main(String[] files) {
    Main.main(Stream.concat(Stream.of("window"), Stream.of(files)).toArray(String[]::new));
  }
}
