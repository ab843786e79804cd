package holdcurve.ui.window.plot;

import holdcurve.common.message.PressureUnit;
import javafx.animation.AnimationTimer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Text;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Scale;

/**
 * A needle gauge: three quarters of a circle, numbered divisions, unit and accuracy class on the
 * face, a band where a healthy circuit holds (EN 837-1 asks for scale, unit and class; the rest is
 * common practice). The needle swings to where pressure sends it and settles without ringing.
 */
public final class Dial extends Region {
  private static final double SIZE = 320;
  private static final double MIDDLE = SIZE / 2;
  private static final double SWEEP = 270;
  private static final double FIRST = -135;

  /** How fast the needle closes in on its place: assumed [1/s]. */
  private static final double QUICKNESS = 7;

  /** Too little to be seen [Pa]. */
  private static final double STANDS = 100;

  private final DoubleProperty pressure = new SimpleDoubleProperty();
  private final DoubleProperty shown = new SimpleDoubleProperty();
  private final Scale scale = new Scale(1, 1, 0, 0);
  private final Group face = new Group();
  private final double range;

  private final AnimationTimer frames =
      new AnimationTimer() {
        private long before;

        @Override
        public void handle(long now) {
          double seconds = before == 0 ? 0 : Math.min(0.1, (now - before) / 1e9);
          before = now;
          swing(seconds);
        }
      };

  /**
   * @param unit that the face shows: bar, kPa or psi
   * @param range end of the scale [Pa gauge]
   * @param accuracyClass such as "1.6"
   * @param low lower end of the healthy band [Pa gauge]
   * @param high upper end [Pa gauge]
   */
  public Dial(PressureUnit unit, double range, String accuracyClass, double low, double high) {
    this.range = range;
    face.setManaged(false);
    face.getTransforms().add(scale);
    getStyleClass().add("hc-dial");
    setMinSize(160, 160);
    setPrefSize(270, 270);
    setMaxSize(SIZE * 1.6, SIZE * 1.6);
    Circle rim = new Circle(MIDDLE, MIDDLE, MIDDLE - 4);
    rim.getStyleClass().add("hc-dial-rim");
    face.getChildren().addAll(rim, band(low, high));
    addDivisions(unit);
    face.getChildren()
        .addAll(
            word(unit.symbol(), MIDDLE + 52, "unit"),
            word("cl. " + accuracyClass, MIDDLE + 74, "class"));
    face.getChildren().add(needle());
    getChildren().add(face);
    sceneProperty().addListener((property, before, now) -> setMoving(now != null));
  }

  private Arc band(double low, double high) {
    Arc band = new Arc(MIDDLE, MIDDLE, 136, 136, 90 - angle(high), angle(high) - angle(low));
    band.setType(ArcType.OPEN);
    band.getStyleClass().add("hc-dial-band");
    return band;
  }

  private void addDivisions(PressureUnit unit) {
    double division = division(unit);
    int divisions = (int) Math.floor(unit.fromPascal(range) / division + 1e-6);
    int numbered = divisions > 60 ? 20 : 10;
    for (int i = 0; i <= divisions; i++) {
      boolean major = i % numbered == 0;
      double inner = major ? 112 : i % 5 == 0 ? 120 : 126;
      double angle = angle(unit.toPascal(i * division));
      Line tick = new Line(MIDDLE, MIDDLE - inner, MIDDLE, MIDDLE - 132);
      tick.getTransforms().add(new Rotate(angle, MIDDLE, MIDDLE));
      tick.getStyleClass().add(major ? "hc-dial-major" : "hc-dial-minor");
      face.getChildren().add(tick);
      if (major) {
        face.getChildren().add(number(Math.round(i * division), angle));
      }
    }
  }

  /** One small division, in the unit of the face: common practice, no source. */
  private static double division(PressureUnit unit) {
    return switch (unit) {
      case PSI -> 1;
      case KPA -> 10;
      default -> 0.1;
    };
  }

  private static Text number(long shown, double degrees) {
    double radians = Math.toRadians(degrees);
    Text text = new Text(Long.toString(shown));
    text.getStyleClass().add("hc-dial-number");
    text.setTextOrigin(VPos.CENTER);
    int digits = text.getText().length();
    text.setX(MIDDLE + (99 - 5 * digits) * Math.sin(radians) - 7 * digits);
    text.setY(MIDDLE - 94 * Math.cos(radians));
    return text;
  }

  private static Text word(String words, double y, String id) {
    Text text = new Text(words);
    text.setId("dial-" + id);
    text.getStyleClass().add("hc-dial-word");
    text.setTextOrigin(VPos.CENTER);
    text.setX(MIDDLE - 4 * words.length());
    text.setY(y);
    return text;
  }

  private Node needle() {
    Polygon pointer =
        new Polygon(
            MIDDLE - 5,
            MIDDLE + 26,
            MIDDLE - 1.2,
            MIDDLE - 124,
            MIDDLE + 1.2,
            MIDDLE - 124,
            MIDDLE + 5,
            MIDDLE + 26);
    pointer.getStyleClass().add("hc-dial-needle");
    Circle hub = new Circle(MIDDLE, MIDDLE, 10);
    hub.getStyleClass().add("hc-dial-needle");
    Rotate turn = new Rotate(FIRST, MIDDLE, MIDDLE);
    shown.addListener((property, before, now) -> turn.setAngle(angle(now.doubleValue())));
    pointer.getTransforms().add(turn);
    return new Group(pointer, hub);
  }

  /** Clockwise from upright [°]. */
  private double angle(double pascals) {
    double share = Math.max(-0.02, Math.min(1.03, pascals / range));
    return FIRST + SWEEP * share;
  }

  /**
   * The pressure whose mark lies in the direction of a place on the dial.
   *
   * @param x in the dial's own coordinates, likewise {@code y}
   * @return [Pa gauge], from 0 to the end of the scale
   */
  public double pressureAt(double x, double y) {
    double degrees = Math.toDegrees(Math.atan2(x - getWidth() / 2, getHeight() / 2 - y));
    return range * Math.max(0, Math.min(1, (degrees - FIRST) / SWEEP));
  }

  /** Where pressure sends the needle [Pa gauge]. */
  public DoubleProperty pressure() {
    return pressure;
  }

  /** Where the needle stands [Pa gauge]. */
  public DoubleProperty shown() {
    return shown;
  }

  /** Lets the needle move for a while. */
  public void swing(double seconds) {
    double gap = pressure.get() - shown.get();
    boolean there = Math.abs(gap) < STANDS;
    shown.set(there ? pressure.get() : shown.get() + gap * (1 - Math.exp(-QUICKNESS * seconds)));
  }

  /** Nothing moves while nobody sees it. */
  private void setMoving(boolean moving) {
    if (moving) {
      frames.start();
    } else {
      frames.stop();
    }
  }

  @Override
  protected void layoutChildren() {
    double factor = Math.min(getWidth(), getHeight()) / SIZE;
    scale.setX(factor);
    scale.setY(factor);
    face.relocate((getWidth() - SIZE * factor) / 2, (getHeight() - SIZE * factor) / 2);
  }
}
