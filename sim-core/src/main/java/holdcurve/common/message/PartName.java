package holdcurve.common.message;

import java.util.Locale;

/** What people call a part or a connection point whose id is written for files. */
public final class PartName {
  private PartName() {}

  /** {@code front-hose} is said "front hose". */
  public static String of(String id) {
    return id.replace('-', ' ').replace('_', ' ').strip().toLowerCase(Locale.ROOT);
  }
}
