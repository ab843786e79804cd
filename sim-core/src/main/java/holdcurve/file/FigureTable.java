package holdcurve.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Tables of figures as CSV text, for a spreadsheet: a format line first, then what is printed. */
final class FigureTable {
  /** Prints the lines of a table. */
  interface Lines {
    void printTo(CSVPrinter printer) throws IOException;
  }

  private FigureTable() {}

  /**
   * @param format name and version of the format
   */
  static String text(String format, Lines lines) {
    StringBuilder text = new StringBuilder("# " + format + "\n");
    try {
      CSVFormat csv = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').build();
      lines.printTo(new CSVPrinter(text, csv));
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder does not fail", e);
    }
    return text.toString();
  }

  /** Four significant digits. */
  static String figure(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }
}
