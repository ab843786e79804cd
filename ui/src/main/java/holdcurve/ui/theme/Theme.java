package holdcurve.ui.theme;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Locale;

/** A set of colours for the whole window. */
public enum Theme {
  LIGHT,
  DARK;

  /** The other one. */
  public Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  /** Style class that the root of a scene carries to take this theme's colours. */
  public String styleClass() {
    return "hc-" + name().toLowerCase(Locale.ROOT);
  }

  /** Address of the stylesheet that the controls are drawn with. */
  public String controlStylesheet() {
    return this == LIGHT
        ? new PrimerLight().getUserAgentStylesheet()
        : new PrimerDark().getUserAgentStylesheet();
  }
}
