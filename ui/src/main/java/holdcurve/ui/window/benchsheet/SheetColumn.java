package holdcurve.ui.window.benchsheet;

/**
 * A column of the table that is filled in. The order is the order on the page: before and after
 * cleaning side by side.
 */
enum SheetColumn {
  BEFORE("mL/min", "before", "before_static_mL_min", "flow before cleaning"),
  AFTER("", "after", "after_static_mL_min", "flow after cleaning"),
  PULSE_BEFORE(
      "µL a pulse", "before", "before_dynamic", "fuel a pulse before cleaning, microlitres"),
  PULSE_AFTER("", "after", "after_dynamic", "fuel a pulse after cleaning, microlitres"),
  DROPS_BEFORE("Drops", "before", "before_drops", "drops before cleaning"),
  DROPS_AFTER("", "after", "after_drops", "drops after cleaning"),
  SPRAY_BEFORE("Spray", "before", "before_spray", "spray before cleaning"),
  SPRAY_AFTER("", "after", "after_spray", "spray after cleaning"),
  COIL("Coil", "Ω", "coil_ohm", "resistance of the coil"),
  MARK("Mark", "", "serial", "mark on its body");

  private final String title;
  private final String below;
  private final String heading;
  private final String meaning;

  SheetColumn(String title, String below, String heading, String meaning) {
    this.title = title;
    this.below = below;
    this.heading = heading;
    this.meaning = meaning;
  }

  String title() {
    return title;
  }

  /** How many columns its title stands over. */
  int span() {
    return this == COIL || this == MARK ? 1 : 2;
  }

  /** Share of the width that it takes [%]. */
  double share() {
    return switch (this) {
      case BEFORE, AFTER -> 9.5;
      case PULSE_BEFORE, PULSE_AFTER, DROPS_BEFORE, DROPS_AFTER -> 9;
      case SPRAY_BEFORE, SPRAY_AFTER -> 11.5;
      case COIL -> 7;
      case MARK -> 8.5;
    };
  }

  /** What stands below the title: the state, or the unit. */
  String below() {
    return below;
  }

  /** Heading in the text of a table; that of pulses goes on with their width. */
  String heading() {
    return heading;
  }

  /** What belongs there, for whoever can't see the heading, and in refusals. */
  String meaning() {
    return meaning;
  }

  boolean isPulse() {
    return this == PULSE_BEFORE || this == PULSE_AFTER;
  }

  boolean isSpray() {
    return this == SPRAY_BEFORE || this == SPRAY_AFTER;
  }
}
