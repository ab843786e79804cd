package holdcurve.ui.theme;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Locale;

/** A set of colours for the whole window. */
public enum Theme {
  LIGHT,
  DARK,
  /** White and yellow on black, for eyes or light that need it. */
  HIGH_CONTRAST;

  /** Dark for light, light for any other. */
  public Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  /** Style class that the root of a scene carries to take this theme's colours. */
  public String styleClass() {
    return "hc-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Address of the stylesheet that the controls are drawn with. */
  public String controlStylesheet() {
    return this == LIGHT
        ? new PrimerLight().getUserAgentStylesheet()
        : new PrimerDark().getUserAgentStylesheet();
  }
}
