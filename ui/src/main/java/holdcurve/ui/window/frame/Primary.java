package holdcurve.ui.window.frame;

import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Button;

/** The one button of a page that leads on. */
public final class Primary {
  private static final String STYLE = "accent";

  private Primary() {}

  /** Makes a button the one while something is true. */
  public static void when(ObservableBooleanValue leads, Button button) {
    Runnable show =
        () -> {
          button.getStyleClass().remove(STYLE);
          if (leads.get()) {
            button.getStyleClass().add(STYLE);
          }
        };
    leads.addListener((property, before, now) -> show.run());
    // a binding is known only weakly by what it listens to
    button.getProperties().put(Primary.class, leads);
    show.run();
  }
}
