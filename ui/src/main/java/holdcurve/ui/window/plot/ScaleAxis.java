package holdcurve.ui.window.plot;

import java.util.List;
import java.util.Locale;
import javafx.scene.chart.ValueAxis;

/** An axis whose ends are free and whose ticks are round numbers; it shows a {@link Scale}. */
final class ScaleAxis extends ValueAxis<Number> {
  private Scale scale = new Scale(0, 1, 0.2);

  ScaleAxis() {
    super(0, 1);
    setAnimated(false);
    setMinorTickVisible(false);
  }

  void show(Scale shown) {
    scale = shown;
    setLowerBound(shown.low());
    setUpperBound(shown.high());
    invalidateRange(List.of());
    requestAxisLayout();
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
