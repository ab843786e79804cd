package holdcurve.oracle;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published tables under {@code reference/} in the test resources. */
public final class ReferenceTable {
  private ReferenceTable() {}

  /** All rows of one table, addressed by column name. */
  public static List<CSVRecord> rows(String file) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).build();
    try (var stream = ReferenceTable.class.getResourceAsStream("/reference/" + file);
        var reader = new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8);
        var parser = format.parse(reader)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One number of a row. */
  public static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
