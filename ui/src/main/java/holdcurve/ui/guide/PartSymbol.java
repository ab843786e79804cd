package holdcurve.ui.guide;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.PartKinds;
import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.Drawing.Stand;
import holdcurve.ui.schematic.Symbol;
import holdcurve.ui.schematic.Symbols;
import java.util.Map;
import java.util.Optional;

/** A drawing that stands between the words: the address of its picture begins with "symbol:". */
public final class PartSymbol {
  private static final String PREFIX = "symbol:";
  private static final String CLAMP = "clamp";

  /** Half of what a symbol needs from side to side [px]. */
  public static final double REACH = 36;

  private PartSymbol() {}

  /**
   * The drawing that an address means; empty if it means a picture.
   *
   * @throws IllegalArgumentException if there is no such kind of part
   */
  public static Optional<Symbol> at(String address) {
    if (!address.startsWith(PREFIX)) {
      return Optional.empty();
    }
    String kind = address.substring(PREFIX.length());
    return Optional.of(kind.equals(CLAMP) ? Symbols.clampPoint() : Symbols.of(one(kind)));
  }

  private static Placed one(String kind) {
    Part part =
        PartKinds.byId(kind)
            .map(
                found ->
                    Part.of(
                        found,
                        kind,
                        "",
                        "",
                        found.equals(Injector.KIND) ? Map.of(Injector.COUNT, 1.0) : Map.of()))
            .orElseThrow(() -> new IllegalArgumentException("no kind of part is a " + kind));
    return new Placed(part, 0, 0, 2 * REACH, Stand.RIGHT);
  }
}
