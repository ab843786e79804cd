package holdcurve.file;

/** The format that a table may name among its settings. */
final class TableFormat {
  private TableFormat() {}

  /** Refuses a newer version or another kind; a table needn't say. */
  static void require(SheetFields settings, String kind, int version) {
    settings
        .find("format")
        .ifPresent(
            place -> {
              String known = kind + "/" + version;
              String format = place.text("write " + known);
              if (format.matches(kind + "/[0-9]{1,6}") && !format.equals(known)) {
                throw place.bad(
                    "this file is of the newer format " + format,
                    "open it with a newer Holdcurve; this one understands up to " + known);
              }
              if (!format.equals(known)) {
                throw place.bad("'" + format + "' is another format", "write " + known);
              }
            });
  }
}
