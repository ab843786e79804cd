package holdcurve.ui.window.frame;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Words on a page, in the sizes that pages use. */
public final class Texts {
  private Texts() {}

  /** Words that wrap and are never cut off. */
  public static Label words(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** The heading of a part of a page. */
  public static Label heading(String text) {
    return words(text, "hc-heading");
  }

  /** The heading of a page that stands in the middle of the window. */
  public static Label large(String text) {
    return words(text, "hc-large");
  }

  /** What belongs to something else and is read last. */
  public static Label aside(String text) {
    return words(text, "hc-muted", "hc-small");
  }

  /** A caution, short, where the step is. */
  public static Label caution(String text) {
    return words(text, "hc-caution", "hc-small");
  }
}
