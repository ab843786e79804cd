package holdcurve.ui.window.frame;

import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;

/** Signs that tell kinds of message apart by shape. */
public enum Sign {
  DROP("M8 0 C8 0 2 8 2 12 A6 6 0 0 0 14 12 C14 8 8 0 8 0 Z", 16, 18),
  TICK("M1 9 L4 6 L7 10 L14 1 L17 4 L7 16 Z", 18, 17),
  QUESTION(
      "M3 6 C3 -2 15 -2 15 6 C15 9 10.5 10 10.5 13 L7.5 13 C7.5 8.5 11.5 8 11.5 6 C11.5 2.5 6.5 2.5"
          + " 6.5 6 Z M7.5 15 L10.5 15 L10.5 18 L7.5 18 Z",
      12,
      18),
  CROSS("M1 4 L4 1 L9 6 L14 1 L17 4 L12 9 L17 14 L14 17 L9 12 L4 17 L1 14 L6 9 Z", 17, 17),
  WARNING("M9 0 L18 17 L0 17 Z M8 6 L8 11 L10 11 L10 6 Z M8 13 L8 15 L10 15 L10 13 Z", 18, 17);

  private final String outline;
  private final double width;
  private final double height;

  Sign(String outline, double width, double height) {
    this.outline = outline;
    this.width = width;
    this.height = height;
  }

  /** A new node with this shape in the colour that the stylesheet gives its surroundings. */
  public Region node() {
    SVGPath path = new SVGPath();
    path.setContent(outline);
    Region region = new Region();
    region.setShape(path);
    region.getStyleClass().add("hc-sign");
    region.setMinSize(width, height);
    region.setMaxSize(width, height);
    return region;
  }
}
