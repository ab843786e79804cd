package holdcurve.ui.schematic;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.Mark.Ink;

/**
 * Symbols in the manner of ISO 1219-1. Injectors have no symbol there and get one of our own.
 *
 * <p>A long list of shapes, since each kind of part has one.
 */
public final class Symbols {
  private static final double INJECTOR = 30;

  private Symbols() {}

  public static Symbol of(Placed placed) {
    Part part = placed.part();
    return switch (part.kind().id()) {
      case "tank" -> tank();
      case "pump" -> pump();
      case "check-valve" -> checkValve();
      case "pipe" -> new Pen().line(-Pen.REACH, 0, Pen.REACH, 0).symbol(0, 0);
      case "hose" -> hose(part.is(Hose.CLAMPABLE));
      case "filter" -> filter();
      case "regulator" -> regulator();
      case "rail" -> rail(placed.width());
      case "damper" -> damper();
      case "accumulator" -> accumulator();
      case "gauge" -> gauge();
      case "joint" -> joint();
      case "injector" -> injectors((int) part.value(Injector.COUNT));
      case "cold-start-injector" -> coldStartInjector();
      default -> new Pen().leads(16).outline(-16, -16, 16, -16, 16, 16, -16, 16).symbol(-16, 16);
    };
  }

  private static Symbol tank() {
    return new Pen()
        .line(-24, 4, -24, 26, 24, 26, 24, 4)
        .line(12, 0, 12, 18)
        .line(0, 0, 12, 0)
        .symbol(0, 26);
  }

  private static Symbol pump() {
    return new Pen().leads(20).circle(0, 0, 20).solid(8, -9, 20, 0, 8, 9).symbol(-20, 20);
  }

  private static Symbol checkValve() {
    return new Pen()
        .leads(11)
        .line(5, -13, -11, 0, 5, 13)
        .circle(-1, 0, 6.5)
        .line(5.5, 0, 11, 0)
        .symbol(-13, 13);
  }

  private static Symbol hose(boolean clampable) {
    Pen pen =
        new Pen()
            .leads(36)
            .path(Ink.LINE, "M -36 0 C -18 22 18 22 36 0")
            .dot(-36, 0, 3)
            .dot(36, 0, 3);
    return clampable ? jaws(pen).symbol(-3, 35) : pen.symbol(-3, 17);
  }

  private static Pen jaws(Pen pen) {
    return pen.solid(Ink.CLAMP, -6, -2, 6, -2, 0, 12).solid(Ink.CLAMP, -6, 35, 6, 35, 0, 21);
  }

  /** Two jaws about the middle of a hose. */
  public static Symbol clampPoint() {
    return jaws(new Pen()).symbol(-2, 35);
  }

  private static Symbol filter() {
    return new Pen()
        .leads(21)
        .outline(-21, 0, 0, -21, 21, 0, 0, 21)
        .dashed(0, -21, 0, 21)
        .symbol(-21, 21);
  }

  /** Box with its arrow, spring with the setting arrow, and the pilot line from the inlet. */
  private static Symbol regulator() {
    return new Pen()
        .leads(19)
        .outline(-19, -19, 19, -19, 19, 19, -19, 19)
        .line(-19, -6, 13, -6)
        .solid(11, -11, 19, -6, 11, -1)
        .line(0, -19, -7, -23, 7, -28, -7, -33, 7, -38, 0, -42)
        .line(-13, -24, 12, -42)
        .solid(16, -45, 7, -43, 12, -36)
        .dashed(-30, 0, -30, 26, 0, 26, 0, 19)
        .symbol(-45, 26);
  }

  private static Symbol rail(double width) {
    return new Pen().box(Ink.FILLED, -width / 2, -6, width, 12, 4).symbol(-6, 6);
  }

  private static Symbol damper() {
    return vessel()
        .line(-13, -30, 13, -30)
        .line(0, -30, -6, -34, 6, -38, -6, -42, 6, -46, 0, -51)
        .symbol(-54, 0);
  }

  private static Symbol accumulator() {
    return vessel().line(-13, -32, 13, -32).outline(-6, -46, 6, -46, 0, -36).symbol(-54, 0);
  }

  private static Pen vessel() {
    return new Pen().line(0, 0, 0, -16).box(Ink.LINE, -13, -54, 26, 38, 13);
  }

  private static Symbol gauge() {
    return new Pen()
        .line(0, 0, 0, -18)
        .circle(0, -36, 18)
        .line(-10, -26, 7, -43)
        .solid(11, -47, 9, -38, 2, -45)
        .dot(0, 0, 4)
        .symbol(-54, 4);
  }

  private static Symbol joint() {
    return new Pen()
        .line(0, 0, 0, -16)
        .circle(0, -24, 8)
        .line(-5, -29, 5, -19)
        .line(-5, -19, 5, -29)
        .symbol(-32, 0);
  }

  private static Symbol injectors(int count) {
    Pen pen = new Pen();
    for (int i = 0; i < count; i++) {
      injector(pen, INJECTOR * (i - (count - 1) / 2.0));
    }
    return pen.symbol(0, 59);
  }

  /** Inlet, body, nose, and a spray of three dashes. */
  private static Pen injector(Pen pen, double x) {
    return pen.line(x, 0, x, 14)
        .outline(
            x - 7, 14, x + 7, 14, x + 7, 34, x + 3, 40, x + 3, 47, x - 3, 47, x - 3, 40, x - 7, 34)
        .line(x - 7, 24, x + 7, 24)
        .line(x - 2, 50, x - 6, 58)
        .line(x, 51, x, 59)
        .line(x + 2, 50, x + 6, 58);
  }

  private static Symbol coldStartInjector() {
    return injector(new Pen(), 0)
        .line(7, 17, 15, 17)
        .line(11, 13, 11, 21)
        .line(8, 14, 14, 20)
        .line(8, 20, 14, 14)
        .symbol(0, 59);
  }
}
