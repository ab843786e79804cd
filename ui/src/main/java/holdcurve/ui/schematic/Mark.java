package holdcurve.ui.schematic;

/**
 * One stroke of a symbol.
 *
 * @param path in the path language of SVG, which JavaFX reads too [px at scale 1]
 * @param ink how it is drawn
 */
public record Mark(String path, Ink ink) {
  /** How a stroke is drawn. */
  public enum Ink {
    /** A line. */
    LINE,
    /** A line of dashes, as pilot lines and meshes have. */
    DASHED,
    /** A line round a filled ground. */
    FILLED,
    /** Filled, without a line. */
    SOLID,
    /** Filled, in the colour of clamps. */
    CLAMP
  }
}
