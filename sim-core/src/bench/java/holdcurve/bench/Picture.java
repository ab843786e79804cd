package holdcurve.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Measured costs drawn side by side, as an SVG for the documentation. */
public final class Picture {
  private static final int WIDTH = 280;
  private static final int HEIGHT = 220;
  private static final int LEFT = 50;
  private static final int TOP = 34;
  private static final int PLOT_WIDTH = 200;
  private static final int PLOT_HEIGHT = 140;

  /** A figure left of a point so near the axis would lie across it. */
  private static final int NEAR_AXIS = 36;

  private static final Map<String, Series> PLOTS = new LinkedHashMap<>();

  private Picture() {}

  /** Costs against a size. */
  public static final class Series {
    private final String size;
    private final String unit;
    private final List<double[]> points = new ArrayList<>();

    /**
     * @param size what is counted
     * @param unit of the cost
     */
    public Series(String size, String unit) {
      this.size = size;
      this.unit = unit;
    }

    /** Adds a measured cost. */
    public void add(double at, double cost) {
      points.add(new double[] {at, cost});
    }

    private double most(int k) {
      return points.stream().mapToDouble(p -> p[k]).max().orElse(1);
    }
  }

  /** Adds a plot. */
  public static void add(String title, Series series) {
    PLOTS.put(title, series);
  }

  /** Writes all plots added so far. */
  static void write(Path file) {
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\""
                + " font-family=\"sans-serif\" font-size=\"12\">%n"
                + "<rect width=\"100%%\" height=\"100%%\" fill=\"white\"/>%n",
            WIDTH * PLOTS.size(),
            HEIGHT));
    int left = 0;
    for (Map.Entry<String, Series> plot : PLOTS.entrySet()) {
      svg.append(plot(plot.getKey(), plot.getValue(), left));
      left += WIDTH;
    }
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, svg.append("</svg>\n"));
    } catch (IOException e) {
      System.out.println("The picture could not be written: " + e);
      return;
    }
    System.out.println("\nThe costs are drawn in " + file.getFileName() + ".");
  }

  private static String plot(String title, Series series, int left) {
    StringBuilder svg = new StringBuilder();
    double x0 = left + LEFT;
    double bottom = TOP + PLOT_HEIGHT;
    svg.append(text(left + WIDTH / 2.0, 18, "middle", title + " [" + series.unit + "]"));
    svg.append(line(x0, bottom, x0 + PLOT_WIDTH, bottom)).append(line(x0, TOP, x0, bottom));
    svg.append(text(x0 + PLOT_WIDTH / 2.0, bottom + 34, "middle", series.size));
    svg.append(text(x0 - 5, bottom, "end", "0"));
    StringBuilder path = new StringBuilder();
    for (double[] point : series.points) {
      double x = x0 + 0.95 * PLOT_WIDTH * point[0] / series.most(0);
      double y = bottom - 0.95 * PLOT_HEIGHT * point[1] / series.most(1);
      path.append(String.format(Locale.ROOT, "%s%.1f,%.1f", path.isEmpty() ? "M" : " L", x, y));
      svg.append(circle(x, y));
      svg.append(text(x, bottom + 16, "middle", number(point[0])));
      svg.append(
          x - x0 < NEAR_AXIS
              ? text(x + 7, y + 9, "start", number(point[1]))
              : text(x - 6, y - 6, "end", number(point[1])));
    }
    return svg.append("<path d=\"")
        .append(path)
        .append("\" fill=\"none\" stroke=\"#1b5e9b\"/>\n")
        .toString();
  }

  private static String number(double value) {
    return value >= 10 || value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.2f", value);
  }

  private static String line(double x1, double y1, double x2, double y2) {
    return String.format(
        Locale.ROOT,
        "<line x1=\"%.0f\" y1=\"%.0f\" x2=\"%.0f\" y2=\"%.0f\" stroke=\"#444\"/>%n",
        x1,
        y1,
        x2,
        y2);
  }

  private static String circle(double x, double y) {
    return String.format(
        Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"#1b5e9b\"/>%n", x, y);
  }

  private static String text(double x, double y, String anchor, String text) {
    return String.format(
        Locale.ROOT,
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n",
        x,
        y,
        anchor,
        text);
  }
}
