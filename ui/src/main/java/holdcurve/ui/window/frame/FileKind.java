package holdcurve.ui.window.frame;

import java.util.List;

/**
 * A kind of file that a person is asked for.
 *
 * @param title of the dialog
 * @param name of the kind
 * @param patterns of file names, such as {@code *.csv}; the first gives the ending of new files
 */
public record FileKind(String title, String name, List<String> patterns) {
  public static final FileKind CIRCUIT =
      new FileKind("A circuit of your own", "Circuits", List.of("*.circuit.json"));
  public static final FileKind PRICES =
      new FileKind("Prices of repairs", "Price lists", List.of("*.json", "*.csv"));
  public static final FileKind DROP_TEST =
      new FileKind(
          "Drop-per-pulse test", "Drop tests", List.of("*.csv", "*.tsv", "*.txt", "*.drops.json"));
  public static final FileKind BENCH_SHEET =
      new FileKind("The bench sheet as a table", "Bench sheets", List.of("*.csv"));
  public static final FileKind DRAWN_SHEET =
      new FileKind("The bench sheet to print", "PDF files", List.of("*.pdf"));
  public static final FileKind RANKING =
      new FileKind("The ranking as a file", "Rankings", List.of("*.csv", "*.json"));
  public static final FileKind SCORES =
      new FileKind("Scores of a class", "Scores", List.of("*.csv"));

  public static final FileKind CASES =
      new FileKind("The case book as a file", "Tables", List.of("*.csv"));
  public static final FileKind RATES =
      new FileKind("Fault rates of a garage", "Fault rates", List.of("*.json"));
  public static final FileKind PICTURE =
      new FileKind("The picture as a file", "Pictures", List.of("*.png"));
  public static final FileKind PROBLEM =
      new FileKind("The report of a problem", "Zip files", List.of("*.zip"));

  public FileKind {
    patterns = List.copyOf(patterns);
  }
}
