package holdcurve.ui.report;

import holdcurve.ui.theme.Palette;
import holdcurve.ui.theme.Rgb;
import holdcurve.ui.theme.Role;
import holdcurve.ui.theme.Theme;

/** Colours of the window's light theme, which is one for paper. */
final class Colours {
  private static final Palette PAPER = Palette.of(Theme.LIGHT);

  private Colours() {}

  static String of(Role role) {
    Rgb rgb = PAPER.get(role);
    return String.format("#%02x%02x%02x", rgb.red(), rgb.green(), rgb.blue());
  }
}
