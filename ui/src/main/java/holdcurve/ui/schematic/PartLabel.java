package holdcurve.ui.schematic;

import holdcurve.common.message.PartName;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Damper;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.RigidPipe;
import holdcurve.ui.schematic.Drawing.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The words at a part.
 *
 * @param lines name, broken where it must be, and a figure if it has one
 * @param base of the first line, from the line that the part belongs to [px at scale 1]
 * @param width within which they are centred [px at scale 1]
 * @param shown whether there is room for them
 */
public record PartLabel(List<String> lines, double base, double width, boolean shown) {
  /** From line to line [px at scale 1]. */
  public static final double LINE = 15;

  private static final double LETTER = 7.2;
  private static final double LEAST = 74;

  /**
   * @param figure that tells the part from another of its kind; may be empty
   */
  public static PartLabel of(Placed placed, String figure) {
    double width = Math.max(LEAST, placed.width() - 8);
    List<String> lines =
        new ArrayList<>(wrapped(PartName.of(placed.part().id()), (int) (width / LETTER)));
    if (!figure.isEmpty()) {
      lines.add(figure);
    }
    return new PartLabel(
        List.copyOf(lines),
        base(placed, lines.size()),
        width,
        placed.stand() != Drawing.Stand.ALONG);
  }

  private static double base(Placed placed, int lines) {
    Symbol symbol = Symbols.of(placed);
    return switch (placed.stand()) {
      case ABOVE -> symbol.top() - 6 - (lines - 1) * LINE;
      case BELOW -> symbol.bottom() + 14;
      default -> placed.part().kind() == Hose.KIND ? 50 : Math.max(symbol.bottom(), 6) + 14;
    };
  }

  /** The property that tells a part from another of its kind. */
  public static Optional<Property> telling(Part part) {
    return Optional.ofNullable(
        switch (part.kind().id()) {
          case "hose" -> Hose.LENGTH;
          case "pipe" -> RigidPipe.LENGTH;
          case "regulator" -> Regulator.SET;
          case "damper" -> Damper.CENTRE;
          default -> null;
        });
  }

  /** A name in lines of at most {@code letters}, where it can be. */
  public static List<String> wrapped(String name, int letters) {
    List<String> lines = new ArrayList<>();
    for (String piece : name.split(" ")) {
      int last = lines.size() - 1;
      if (last >= 0 && lines.get(last).length() + 1 + piece.length() <= letters) {
        lines.set(last, lines.get(last) + " " + piece);
      } else {
        lines.add(piece);
      }
    }
    return lines;
  }
}
