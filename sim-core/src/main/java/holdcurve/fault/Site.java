package holdcurve.fault;

import java.util.List;
import java.util.Objects;

/**
 * A place in a particular circuit where a fault can sit.
 *
 * @param id short and unique within the fault, such as a part id
 * @param where plain words for a mechanic, such as "check valve in the pump outlet"
 * @param point connection point that the fault acts on
 * @param parts ids of the parts to look at
 */
public record Site(String id, String where, String point, List<String> parts) {
  public Site {
    Objects.requireNonNull(id);
    Objects.requireNonNull(where);
    Objects.requireNonNull(point);
    parts = List.copyOf(parts);
  }
}
