package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.HoldOutlook;
import holdcurve.advice.whatif.Outlook;
import holdcurve.common.number.Chance;
import holdcurve.common.number.Interval;
import holdcurve.ui.window.job.PressureFormat;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;

/** Before and after in figures, with the ranges that hold 90 %. */
final class ComparisonTable extends GridPane {
  private final PressureFormat pressures;

  ComparisonTable(PressureFormat pressures) {
    this.pressures = pressures;
    setId("comparison");
    getStyleClass().add("hc-comparison");
    for (double share : new double[] {34, 33, 33}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(share);
      getColumnConstraints().add(column);
    }
  }

  /** Shows holds alone where {@code figures} is null. */
  void show(WhatIfModel.Holds holds, WhatIfModel.Figures figures) {
    getChildren().clear();
    if (holds == null) {
      return;
    }
    addRow(0, word(""), strong("Before"), strong("After"));
    HoldOutlook before = figures == null ? holds.before() : figures.before().hold();
    HoldOutlook after = figures == null ? holds.after() : figures.after().hold();
    addRow(
        1,
        word("Chance that the hold passes"),
        strong(Chance.words(before.passChance())),
        strong(Chance.words(after.passChance())));
    addRow(2, word("  which asks for"), word(limit(before)), word(limit(after)));
    if (figures != null) {
      addEngine(figures.before(), figures.after());
    }
  }

  private void addEngine(Outlook before, Outlook after) {
    addRow(3, word("Build-up"), word(seconds(before.buildUp())), word(seconds(after.buildUp())));
    addRow(4, word("Engine at idle"), word(range(before.idle())), word(range(after.idle())));
    addRow(
        5,
        word("Engine at full load"),
        word(range(before.fullLoad())),
        word(range(after.fullLoad())));
  }

  private String limit(HoldOutlook outlook) {
    return pressures.text(outlook.limit().pressure())
        + String.format(Locale.ROOT, " after %.0f min", outlook.limit().time() / 60);
  }

  private String range(Interval value) {
    return pressures.text(value.middle())
        + " ("
        + pressures.number(value.low())
        + " to "
        + pressures.number(value.high())
        + ")";
  }

  private static String seconds(Interval value) {
    return String.format(
        Locale.ROOT, "%.1f s (%.1f to %.1f)", value.middle(), value.low(), value.high());
  }

  private static Label word(String text) {
    Label label = new Label(text);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.setWrapText(true);
    return label;
  }

  private static Label strong(String text) {
    Label label = word(text);
    label.getStyleClass().add("hc-strong");
    return label;
  }
}
