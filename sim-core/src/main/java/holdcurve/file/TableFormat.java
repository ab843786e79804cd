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
              JsonFiles.requireOlder(place, format, kind, version);
              if (!format.equals(known)) {
                throw place.bad("'" + format + "' is another format", "write " + known);
              }
            });
  }
}
