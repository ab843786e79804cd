package holdcurve.ui.window.plot;

import java.util.List;
import java.util.Locale;
import javafx.scene.chart.ValueAxis;

/**
 * An axis whose ends are free and whose ticks are round numbers; it shows a {@link Scale}, or a
 * part of one.
 */
final class ScaleAxis extends ValueAxis<Number> {
  /** Narrowest part of the scale that is shown [-]. */
  private static final double NARROWEST = 0.02;

  private Scale whole = new Scale(0, 1, 0.2);
  private Scale scale = whole;
  private double from;
  private double to = 1;

  ScaleAxis() {
    super(0, 1);
    setAnimated(false);
    setMinorTickVisible(false);
  }

  /** Shows a scale; as large a part of it as of that before. */
  void show(Scale shown) {
    whole = shown;
    update();
  }

  private void update() {
    scale = isZoomed() ? whole.part(from, to) : whole;
    setLowerBound(scale.low());
    setUpperBound(scale.high());
    invalidateRange(List.of());
    requestAxisLayout();
  }

  /** Whether a part of the scale shows. */
  boolean isZoomed() {
    return to - from < 1;
  }

  void showAll() {
    from = 0;
    to = 1;
    update();
  }

  /**
   * Shows a smaller part, or a larger one.
   *
   * @param factor more than 1 for a smaller part
   * @param place share of what shows that stays where it is [-]
   */
  void zoom(double factor, double place) {
    double width = Math.max(NARROWEST, Math.min(1, (to - from) / factor));
    double fixed = from + Math.max(0, Math.min(1, place)) * (to - from);
    begin(fixed - (fixed - from) / (to - from) * width, width);
  }

  /**
   * Moves what shows.
   *
   * @param share of what shows [-]
   */
  void move(double share) {
    begin(from + share * (to - from), to - from);
  }

  /** Moves a value to the middle, if it doesn't show. */
  void reveal(double value) {
    double share = share(value);
    if (share < 0 || share > 1) {
      move(share - 0.5);
    }
  }

  /** Where a value stands: 0 at the lower end of what shows, 1 at the upper [-]. */
  double share(double value) {
    return (value - scale.low()) / (scale.high() - scale.low());
  }

  private void begin(double at, double width) {
    from = Math.max(0, Math.min(1 - width, at));
    to = from + width;
    update();
  }

  @Override
  protected List<Number> calculateTickValues(double length, Object range) {
    return List.copyOf(scale.ticks());
  }

  @Override
  protected List<Number> calculateMinorTickMarks() {
    return List.of();
  }

  @Override
  protected String getTickMarkLabel(Number value) {
    return String.format(Locale.ROOT, "%." + scale.decimals() + "f", value.doubleValue());
  }

  @Override
  protected Object getRange() {
    return scale;
  }

  @Override
  protected void setRange(Object range, boolean animate) {
    setScale(
        calculateNewScale(
            getSide().isVertical() ? getHeight() : getWidth(), scale.low(), scale.high()));
    currentLowerBound.set(scale.low());
  }
}
