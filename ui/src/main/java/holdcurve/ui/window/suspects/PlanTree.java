package holdcurve.ui.window.suspects;

import holdcurve.advice.plan.Branch;
import holdcurve.advice.plan.PlannedTest;
import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.frame.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;

/** A test, below it each outcome, and beside each outcome what would then be likely. */
final class PlanTree extends Region {
  private static final double NAMED = 0.05;
  private static final int MOST_NAMED = 3;

  private static final double INDENT = 26;
  private static final double ARROW = 26;
  private static final double GAP = 8;

  /** Share of the width right of the indent that an outcome takes [-]. */
  private static final double OUTCOME = 0.46;

  private final VBox root = box("hc-plan-test");
  private final List<VBox> outcomes = new ArrayList<>();
  private final List<VBox> thens = new ArrayList<>();
  private final Path wires = new Path();

  PlanTree() {
    setId("plan-tree");
    wires.getStyleClass().add("hc-plan-wire");
    wires.setManaged(false);
  }

  void show(PlannedTest test, PressureUnit unit) {
    outcomes.clear();
    thens.clear();
    root.getChildren()
        .setAll(
            Texts.words(
                String.format(
                    Locale.ROOT,
                    "%s, %.0f min",
                    test.procedure().name(),
                    test.procedure().minutes()),
                "hc-strong"));
    for (Branch branch : test.branches()) {
      VBox outcome = box("hc-plan-outcome");
      outcome
          .getChildren()
          .addAll(
              Texts.words(branch.said().in(unit)),
              Texts.words(Figures.percent(branch.probability()) + " likely", "hc-muted"));
      outcomes.add(outcome);
      thens.add(then(branch));
    }
    getChildren().setAll(wires, root);
    getChildren().addAll(outcomes);
    getChildren().addAll(thens);
    requestLayout();
  }

  private static VBox then(Branch branch) {
    VBox then = box("hc-plan-then");
    branch.believed().stream()
        .filter(share -> share.probability() > NAMED)
        .limit(MOST_NAMED)
        .forEach(
            share ->
                then.getChildren()
                    .add(
                        Texts.words(
                            Figures.percent(share.probability()) + "  " + share.name(),
                            then.getChildren().isEmpty() ? "hc-strong" : "hc-usual")));
    return then;
  }

  private static VBox box(String style) {
    VBox box = new VBox();
    box.getStyleClass().addAll("hc-plan-box", style);
    return box;
  }

  private double outcomeWidth(double width) {
    return Math.max(0, OUTCOME * (width - INDENT));
  }

  private double thenWidth(double width) {
    return Math.max(0, width - INDENT - outcomeWidth(width) - ARROW);
  }

  private double rowHeight(int row, double width) {
    return Math.max(
        outcomes.get(row).prefHeight(outcomeWidth(width)),
        thens.get(row).prefHeight(thenWidth(width)));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double wide = width < 0 ? getWidth() : width;
    double height = root.prefHeight(wide);
    for (int i = 0; i < outcomes.size(); i++) {
      height += GAP + rowHeight(i, wide);
    }
    return height;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double y = root.prefHeight(width);
    root.resizeRelocate(0, 0, width, y);
    wires.getElements().clear();
    double stem = INDENT / 2;
    for (int i = 0; i < outcomes.size(); i++) {
      y += GAP;
      double height = rowHeight(i, width);
      double middle = y + height / 2;
      double end = INDENT + outcomeWidth(width);
      outcomes.get(i).resizeRelocate(INDENT, y, outcomeWidth(width), height);
      thens.get(i).resizeRelocate(end + ARROW, y, thenWidth(width), height);
      wires
          .getElements()
          .addAll(
              new MoveTo(stem, root.getHeight()),
              new LineTo(stem, middle),
              new LineTo(INDENT, middle),
              new MoveTo(end, middle),
              new LineTo(end + ARROW, middle),
              new LineTo(end + ARROW - 7, middle - 4),
              new MoveTo(end + ARROW, middle),
              new LineTo(end + ARROW - 7, middle + 4));
      y += height;
    }
  }
}
