package holdcurve.ui.theme;

import java.util.Locale;

/** What a colour is for. The stylesheet gives each a value in every theme. */
public enum Role {
  /** Ground behind plots and lists. */
  PAPER,
  /** Ground of bars and side panels. */
  PANEL,
  /** Ground of what is chosen. */
  CHOSEN,
  /** Thin borders; carries no meaning. */
  LINE,
  /** Words to be read. */
  TEXT,
  /** Words that explain other words. */
  MUTED,
  /** Words and outlines one can act on. */
  ACCENT,
  /** Words on a ground of {@link #ACCENT}. */
  ON_ACCENT,
  /** Readings of the gauge. */
  MEASURED,
  /** What the gauge should show. */
  EXPECTED,
  /** Where nine in ten readings should lie. */
  BAND,
  /** Grid of a plot. */
  GRID,
  /** How probable a suspect is. */
  BAR,
  /** Ground under a {@link #BAR}. */
  BAR_GROUND,
  /** Line that holds together what can't be told apart. */
  GROUP,
  /** Ground of a verdict that names a fault, and of a banner. */
  ALERT_GROUND,
  /** Words and signs on {@link #ALERT_GROUND}. */
  ALERT,
  /** Ground of a verdict that says all is well. */
  SOUND_GROUND,
  /** Words and signs on {@link #SOUND_GROUND}. */
  SOUND;

  /** Name that the stylesheet uses, such as {@code -hc-alert-ground}. */
  public String cssName() {
    return "-hc-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
