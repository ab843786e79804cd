package holdcurve.ui.window.benchsheet;

/** A column of the table that is filled in. The order is the order on the page. */
enum SheetColumn {
  BEFORE("Before", "mL/min", "static flow before service"),
  AFTER("After", "mL/min", "static flow after service"),
  PULSE(
      "Pulse", "µL each", "flow of one pulse of the stated width, the same figure as mL per 1000"),
  DROPS("Drops", "", "drops counted with the injector shut"),
  SPRAY("Spray", "1–4", "grade of the spray, 1 the best"),
  COIL("Coil", "Ω", "resistance of the coil");

  private final String title;
  private final String unit;
  private final String meaning;

  SheetColumn(String title, String unit, String meaning) {
    this.title = title;
    this.unit = unit;
    this.meaning = meaning;
  }

  String title() {
    return title;
  }

  String unit() {
    return unit;
  }

  /** What belongs there, for whoever can't see the heading. */
  String meaning() {
    return meaning;
  }
}
