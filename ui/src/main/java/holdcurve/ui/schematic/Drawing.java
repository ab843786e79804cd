package holdcurve.ui.schematic;

import holdcurve.physics.circuit.Part;
import java.util.List;

/**
 * A circuit laid out on paper.
 *
 * @param width of all [px at scale 1]
 * @param height of all [px at scale 1]
 * @param parts in circuit order
 * @param wires lines that join them
 */
public record Drawing(double width, double height, List<Placed> parts, List<Wire> wires) {
  /** How a part stands. */
  public enum Stand {
    /** In a line that flows to the right. */
    RIGHT,
    /** In a line that flows to the left. */
    LEFT,
    /** Above its connection point. */
    ABOVE,
    /** Below its connection point. */
    BELOW,
    /** Along its connection point. */
    ALONG
  }

  /**
   * A part on the paper.
   *
   * @param x middle
   * @param y of the line it belongs to
   * @param width it may take
   */
  public record Placed(Part part, double x, double y, double width, Stand stand) {}

  /** A straight line between two places. */
  public record Wire(double fromX, double fromY, double toX, double toY) {}
}
