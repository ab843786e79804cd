package holdcurve.ui.window.circuit;

import holdcurve.circuit.Part;
import holdcurve.part.Hose;
import holdcurve.part.Injector;
import holdcurve.ui.window.circuit.Drawing.Placed;
import holdcurve.ui.window.circuit.Drawing.Stand;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.Shape;

/**
 * Symbols in the manner of ISO 1219-1, drawn around the origin, which lies on the line; flow to the
 * right. Injectors have no symbol there and get one of our own.
 */
final class Symbols {
  private static final double REACH = 52;
  private static final double INJECTOR = 30;

  private Symbols() {}

  static Group of(Placed placed) {
    Part part = placed.part();
    Group symbol =
        switch (part.kind().id()) {
          case "tank" -> tank();
          case "pump" -> pump();
          case "check-valve" -> checkValve();
          case "pipe" -> pipe();
          case "hose" -> hose(part);
          case "filter" -> filter();
          case "regulator" -> regulator();
          case "rail" -> rail(placed.width());
          case "damper" -> damper();
          case "accumulator" -> accumulator();
          case "gauge" -> gauge();
          case "joint" -> joint();
          case "injector" -> injectors((int) part.value(Injector.COUNT));
          case "cold-start-injector" -> coldStartInjector();
          default -> unknown();
        };
    if (placed.stand() == Stand.LEFT) {
      symbol.setScaleX(-1);
    }
    return symbol;
  }

  private static Group group(Node... nodes) {
    return new Group(nodes);
  }

  private static <S extends Shape> S outline(S shape) {
    shape.getStyleClass().add("hc-sym");
    return shape;
  }

  private static <S extends Shape> S solid(S shape) {
    shape.getStyleClass().add("hc-sym-solid");
    return shape;
  }

  private static Shape path(String svg) {
    SVGPath path = new SVGPath();
    path.setContent(svg);
    return outline(path);
  }

  private static Line stroke(double x1, double y1, double x2, double y2) {
    return outline(new Line(x1, y1, x2, y2));
  }

  private static Group leads(double half) {
    return group(stroke(-REACH, 0, -half, 0), stroke(half, 0, REACH, 0));
  }

  private static Group tank() {
    return group(
        path("M -24 4 L -24 26 L 24 26 L 24 4"), stroke(12, 0, 12, 18), stroke(0, 0, 12, 0));
  }

  private static Group pump() {
    return group(leads(20), outline(new Circle(20)), solid(new Polygon(8, -9, 20, 0, 8, 9)));
  }

  private static Group checkValve() {
    return group(
        leads(11),
        outline(new Polyline(5, -13, -11, 0, 5, 13)),
        outline(new Circle(-1, 0, 6.5)),
        stroke(5.5, 0, 11, 0));
  }

  private static Group pipe() {
    return group(stroke(-REACH, 0, REACH, 0));
  }

  private static Group hose(Part part) {
    Group hose =
        group(
            stroke(-REACH, 0, -36, 0),
            stroke(36, 0, REACH, 0),
            path("M -36 0 C -18 22 18 22 36 0"),
            solid(new Circle(-36, 0, 3)),
            solid(new Circle(36, 0, 3)));
    if (part.is(Hose.CLAMPABLE)) {
      hose.getChildren().add(clampPoint());
    }
    return hose;
  }

  /** Two jaws about the middle of a hose. */
  static Group clampPoint() {
    Group clamp =
        group(solid(new Polygon(-6, -2, 6, -2, 0, 12)), solid(new Polygon(-6, 35, 6, 35, 0, 21)));
    clamp.getStyleClass().add("hc-clamp-point");
    return clamp;
  }

  private static Group filter() {
    Line mesh = stroke(0, -21, 0, 21);
    mesh.getStrokeDashArray().setAll(4.0, 3.0);
    return group(leads(21), outline(new Polygon(-21, 0, 0, -21, 21, 0, 0, 21)), mesh);
  }

  /** Box with its arrow, spring with the setting arrow, and the pilot line from the inlet. */
  private static Group regulator() {
    Shape pilot = path("M -30 0 L -30 26 L 0 26 L 0 19");
    pilot.getStrokeDashArray().setAll(3.0, 3.0);
    return group(
        leads(19),
        outline(new Rectangle(-19, -19, 38, 38)),
        stroke(-19, -6, 13, -6),
        solid(new Polygon(11, -11, 19, -6, 11, -1)),
        path("M 0 -19 L -7 -23 L 7 -28 L -7 -33 L 7 -38 L 0 -42"),
        stroke(-13, -24, 12, -42),
        solid(new Polygon(16, -45, 7, -43, 12, -36)),
        pilot);
  }

  private static Group rail(double width) {
    Rectangle bar = new Rectangle(-width / 2, -6, width, 12);
    bar.setArcWidth(8);
    bar.setArcHeight(8);
    bar.getStyleClass().add("hc-sym-filled");
    return group(outline(bar));
  }

  private static Group damper() {
    return group(
        stroke(0, 0, 0, -16),
        vessel(),
        stroke(-13, -30, 13, -30),
        path("M 0 -30 L -6 -34 L 6 -38 L -6 -42 L 6 -46 L 0 -51"));
  }

  private static Group accumulator() {
    return group(
        stroke(0, 0, 0, -16),
        vessel(),
        stroke(-13, -32, 13, -32),
        outline(new Polygon(-6, -46, 6, -46, 0, -36)));
  }

  private static Shape vessel() {
    Rectangle vessel = new Rectangle(-13, -54, 26, 38);
    vessel.setArcWidth(26);
    vessel.setArcHeight(26);
    return outline(vessel);
  }

  private static Group gauge() {
    return group(
        stroke(0, 0, 0, -18),
        outline(new Circle(0, -36, 18)),
        stroke(-10, -26, 7, -43),
        solid(new Polygon(11, -47, 9, -38, 2, -45)),
        solid(new Circle(0, 0, 4)));
  }

  private static Group joint() {
    return group(
        stroke(0, 0, 0, -16),
        outline(new Circle(0, -24, 8)),
        stroke(-5, -29, 5, -19),
        stroke(-5, -19, 5, -29));
  }

  private static Group injectors(int count) {
    Group all = group();
    double first = -INJECTOR * (count - 1) / 2;
    for (int i = 0; i < count; i++) {
      Group one = injector();
      one.setTranslateX(first + i * INJECTOR);
      all.getChildren().add(one);
    }
    return all;
  }

  private static Group injector() {
    return group(
        stroke(0, 0, 0, 14),
        outline(new Polygon(-7, 14, 7, 14, 7, 34, 3, 40, 3, 47, -3, 47, -3, 40, -7, 34)),
        stroke(-7, 24, 7, 24),
        path("M -2 50 L -6 58 M 0 51 L 0 59 M 2 50 L 6 58"));
  }

  private static Group coldStartInjector() {
    Group injector = injector();
    injector
        .getChildren()
        .addAll(path("M 7 17 L 15 17 M 11 13 L 11 21 M 8 14 L 14 20 M 8 20 L 14 14"));
    return injector;
  }

  private static Group unknown() {
    return group(leads(16), outline(new Rectangle(-16, -16, 32, 32)));
  }
}
