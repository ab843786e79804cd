package holdcurve.ui.report;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import holdcurve.ui.theme.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A hold as an SVG drawing: readings, bands of what was expected, an earlier hold. What differs is
 * told by shape as well as by colour, so that it survives a black-and-white printer.
 */
final class HoldDrawing {
  private static final double WIDTH = 660;
  private static final double HEIGHT = 250;
  private static final double LEFT = 54;
  private static final double RIGHT = 8;
  private static final double TOP = 8;
  private static final double BOTTOM = 38;

  /** Readings drawn at most. */
  private static final int MOST_MARKS = 240;

  private final Axis minutes;
  private final Axis pressure;
  private final PressureUnit unit;
  private final StringBuilder code = new StringBuilder();
  private final StringBuilder words = new StringBuilder();

  private HoldDrawing(Axis minutes, Axis pressure, PressureUnit unit) {
    this.minutes = minutes;
    this.pressure = pressure;
    this.unit = unit;
  }

  /**
   * @param test the hold
   * @param band filled, with its middle drawn as a line
   * @param outline a second band, drawn as two dashed lines
   * @param earlier another hold laid over it
   * @param suspected what the likeliest cause foretells; its middle is drawn as a dotted line
   * @param unit in which pressures are written
   */
  static Html of(
      HoldTest test,
      Optional<HoldCurve> band,
      Optional<HoldCurve> outline,
      Optional<HoldTest> earlier,
      Optional<HoldCurve> suspected,
      PressureUnit unit) {
    List<Double> pressures = new ArrayList<>();
    test.log().hold().forEach(reading -> pressures.add(reading.pressure()));
    earlier.ifPresent(
        hold -> hold.log().hold().forEach(reading -> pressures.add(reading.pressure())));
    band.ifPresent(curve -> addAll(pressures, curve));
    outline.ifPresent(curve -> addAll(pressures, curve));
    suspected.ifPresent(curve -> addAll(pressures, curve.middle()));
    double low = pressures.stream().mapToDouble(p -> p).min().orElse(0);
    double high = pressures.stream().mapToDouble(p -> p).max().orElse(1e5);
    HoldDrawing drawing =
        new HoldDrawing(
            Axis.around(0, Math.max(test.log().holdSpan(), 60) / 60),
            Axis.around(unit.fromPascal(low), unit.fromPascal(high)),
            unit);
    drawing.grid();
    band.ifPresent(drawing::band);
    outline.ifPresent(drawing::outline);
    suspected.ifPresent(c -> drawing.line(c.time(), c.middle(), Role.MEASURED, "1.5 4"));
    earlier.ifPresent(drawing::earlier);
    drawing.readings(test);
    return drawing.html();
  }

  private static void addAll(List<Double> pressures, HoldCurve curve) {
    addAll(pressures, curve.low());
    addAll(pressures, curve.high());
  }

  private static void addAll(List<Double> pressures, double[] pascals) {
    Arrays.stream(pascals).forEach(pressures::add);
  }

  private Html html() {
    return new Html(
        String.format(
            Locale.ROOT,
            "<div class=\"plot\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\""
                + " height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\">%n%s</svg>%n%s</div>%n",
            WIDTH,
            HEIGHT,
            WIDTH,
            HEIGHT,
            code,
            words));
  }

  private double x(double seconds) {
    return LEFT + minutes.share(seconds / 60) * (WIDTH - LEFT - RIGHT);
  }

  private double y(double pascals) {
    return HEIGHT - BOTTOM - pressure.share(unit.fromPascal(pascals)) * (HEIGHT - TOP - BOTTOM);
  }

  private void add(String format, Object... values) {
    code.append(String.format(Locale.ROOT, format + "%n", values));
  }

  private void grid() {
    String line = "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>";
    double floor = HEIGHT - BOTTOM;
    for (double mark : minutes.marks()) {
      double at = x(mark * 60);
      add(line, at, TOP, at, floor, Colours.of(Role.GRID));
      word(at - 30, floor + 3, 60, "center", number(mark, minutes));
    }
    for (double mark : pressure.marks()) {
      double at = y(unit.toPascal(mark));
      add(line, LEFT, at, WIDTH - RIGHT, at, Colours.of(Role.GRID));
      word(0, at - 7, LEFT - 6, "right", number(mark, pressure) + " " + unit.symbol());
    }
    word(LEFT, floor + 18, WIDTH - LEFT - RIGHT, "center", "minutes after the pump stopped");
  }

  /**
   * Words stand over the drawing, not in it: what turns the drawing into PDF would take fonts of
   * the machine for them.
   */
  private void word(double left, double top, double width, String align, String text) {
    words.append(
        String.format(
            Locale.ROOT,
            "<span style=\"left:%.0fpx;top:%.0fpx;width:%.0fpx;text-align:%s\">%s</span>%n",
            left,
            top,
            width,
            align,
            text));
  }

  private static String number(double value, Axis axis) {
    return String.format(Locale.ROOT, "%." + axis.decimals() + "f", value + 0.0);
  }

  private void band(HoldCurve curve) {
    int last = curve.time().length - 1;
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= last; i++) {
      points.append(point(curve.time()[i], curve.high()[i]));
    }
    for (int i = last; i >= 0; i--) {
      points.append(point(curve.time()[i], curve.low()[i]));
    }
    add("<polygon points=\"%s\" fill=\"%s\"/>", points.toString().strip(), Colours.of(Role.BAND));
    line(curve.time(), curve.middle(), Role.EXPECTED, "");
  }

  private void outline(HoldCurve curve) {
    line(curve.time(), curve.low(), Role.TEXT, "5 4");
    line(curve.time(), curve.high(), Role.TEXT, "5 4");
  }

  private void line(double[] times, double[] values, Role role, String dashes) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < times.length; i++) {
      points.append(point(times[i], values[i]));
    }
    add(
        "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.4\"%s/>",
        points.toString().strip(),
        Colours.of(role),
        dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
  }

  private String point(double time, double pressure) {
    return String.format(Locale.ROOT, "%.1f,%.1f ", x(time), y(pressure));
  }

  private void earlier(HoldTest hold) {
    for (Reading reading : thinned(hold, minutes.high() * 60)) {
      double at = x(reading.time());
      double level = y(reading.pressure());
      add(
          "<path d=\"M%.1f %.1fL%.1f %.1fM%.1f %.1fL%.1f %.1f\" stroke=\"%s\""
              + " stroke-width=\"1.3\" fill=\"none\"/>",
          at - 3.5,
          level - 3.5,
          at + 3.5,
          level + 3.5,
          at - 3.5,
          level + 3.5,
          at + 3.5,
          level - 3.5,
          Colours.of(Role.GROUP));
    }
  }

  private void readings(HoldTest test) {
    for (Reading reading : thinned(test, minutes.high() * 60)) {
      add(
          "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\" stroke=\"%s\"/>",
          x(reading.time()),
          y(reading.pressure()),
          reading.doubtful() ? Colours.of(Role.PAPER) : Colours.of(Role.MEASURED),
          Colours.of(Role.MEASURED));
    }
  }

  private static List<Reading> thinned(HoldTest test, double end) {
    List<Reading> hold = test.log().hold().stream().filter(r -> r.time() <= end).toList();
    int step = 1 + hold.size() / MOST_MARKS;
    List<Reading> kept = new ArrayList<>();
    for (int i = 0; i < hold.size(); i += step) {
      kept.add(hold.get(i));
    }
    return kept;
  }
}
