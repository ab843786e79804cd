package holdcurve.common.message;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** What people call a part or a connection point whose id is written for files. */
public final class PartName {
  private PartName() {}

  /** Several, such as "feed hose and return hose", in the order they come. */
  public static String all(Collection<String> ids) {
    List<String> names = ids.stream().map(PartName::of).toList();
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** {@code front-hose} is said "front hose". */
  public static String of(String id) {
    return id.replace('-', ' ').replace('_', ' ').strip().toLowerCase(Locale.ROOT);
  }
}
