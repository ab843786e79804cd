package holdcurve.ui.window;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Decides whether a window can be shown here, and says why not in one sentence. */
final class DisplayCheck {
  static final String NO_DISPLAY =
      "No window can be shown because there is no display (neither DISPLAY nor WAYLAND_DISPLAY is"
          + " set).";
  static final String DISPLAY_CLOSED =
      "No window can be shown because the display can't be opened (check DISPLAY and its access).";
  static final String NO_GTK =
      "No window can be shown because the GTK 3 library is missing (install libgtk-3-0 or gtk3).";

  private DisplayCheck() {}

  /**
   * What can be told before anything is started.
   *
   * @param system name of the operating system, as in the property {@code os.name}
   * @param environment its environment variables
   * @param platform property {@code glass.platform}; null where unset. A screenless one needs no
   *     display
   * @return empty where nothing speaks against a window
   */
  static Optional<String> before(String system, Map<String, String> environment, String platform) {
    boolean unixDesktop = !system.startsWith("Windows") && !system.startsWith("Mac");
    boolean display = isSet(environment, "DISPLAY") || isSet(environment, "WAYLAND_DISPLAY");
    return unixDesktop && !display && platform == null ? Optional.of(NO_DISPLAY) : Optional.empty();
  }

  private static boolean isSet(Map<String, String> environment, String name) {
    return !environment.getOrDefault(name, "").isBlank();
  }

  /**
   * What the failure of a start means.
   *
   * @param failure what JavaFX threw, on whichever thread
   */
  static String because(Throwable failure) {
    String all = messages(failure).toLowerCase(Locale.ROOT);
    if (all.contains("unable to open display")) {
      return DISPLAY_CLOSED;
    }
    if (all.contains("gtk") || all.contains("glass")) {
      return NO_GTK;
    }
    return "No window can be shown because the graphics can't be started ("
        + firstMessage(failure)
        + ").";
  }

  private static String messages(Throwable failure) {
    StringBuilder all = new StringBuilder();
    for (Throwable t = failure; t != null; t = t.getCause()) {
      all.append(t.getMessage()).append('\n');
    }
    return all.toString();
  }

  private static String firstMessage(Throwable failure) {
    String message = failure.getMessage();
    return message == null
        ? failure.getClass().getSimpleName()
        : message.lines().findFirst().orElse("");
  }
}
