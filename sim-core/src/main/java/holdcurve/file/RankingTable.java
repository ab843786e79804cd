package holdcurve.file;

import holdcurve.common.text.SpreadsheetText;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.balance.LeakShare;
import holdcurve.physics.circuit.Unit;
import java.io.IOException;
import java.util.Locale;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a ranking as CSV, one figure a line, for a spreadsheet: {@code
 * table,test,id,what,quantity,unit,value,low,high}. A format line comes first. Curves are left to
 * the JSON.
 */
public final class RankingTable {
  private final CSVPrinter printer;

  private RankingTable(CSVPrinter printer) {
    this.printer = printer;
  }

  /** The ranking as CSV text of format {@value Ranking#FORMAT}. */
  public static String csv(Ranking ranking) {
    return FigureTable.text(Ranking.FORMAT, printer -> new RankingTable(printer).write(ranking));
  }

  private void write(Ranking ranking) throws IOException {
    printer.printRecord(
        "table",
        "test",
        "id",
        "what",
        "quantity",
        "unit",
        "value",
        "low_5_percent",
        "high_95_percent");
    for (Suspect suspect : ranking.suspects()) {
      write(suspect);
    }
    for (FallReport fall : ranking.falls()) {
      write(fall);
    }
    for (Reasons reasons : ranking.reasons()) {
      for (Reason reason : reasons.reasons()) {
        row(
            "reason",
            "",
            SpreadsheetText.harmless(reasons.suspect()),
            SpreadsheetText.harmless(reason.what()),
            "times likelier than " + reasons.rival(),
            "",
            FigureTable.figure(Math.exp(reason.weight())));
      }
    }
  }

  private void write(Suspect suspect) throws IOException {
    String probability = FigureTable.figure(suspect.probability());
    row(
        "suspect",
        "",
        SpreadsheetText.harmless(suspect.id()),
        SpreadsheetText.harmless(suspect.name()),
        "probability",
        "",
        probability);
    if (suspect.size().isPresent()) {
      FaultSize size = suspect.size().get();
      printer.printRecord(
          "suspect",
          "",
          SpreadsheetText.harmless(suspect.id()),
          SpreadsheetText.harmless(suspect.name()),
          size.name(),
          size.unit().symbol(),
          FigureTable.figure(size.unit().fromSi(size.value().middle())),
          FigureTable.figure(size.unit().fromSi(size.value().low())),
          FigureTable.figure(size.unit().fromSi(size.value().high())));
    }
  }

  private void write(FallReport fall) throws IOException {
    String whole = FigureTable.figure(Unit.BAR.fromSi(fall.fall()));
    row(
        "fall",
        SpreadsheetText.harmless(fall.test()),
        "all",
        "fall that was read",
        "pressure",
        "bar",
        whole);
    for (FallShare share : fall.shares()) {
      String id = share.cause().name().toLowerCase(Locale.ROOT);
      amounts("fall", fall, id, share.cause().title(), share.pressure(), share.volume());
    }
    for (LeakShare leak : fall.leaks()) {
      amounts(
          "leak if true",
          fall,
          SpreadsheetText.harmless(leak.suspect()),
          SpreadsheetText.harmless(leak.name()),
          leak.pressure(),
          leak.volume());
    }
  }

  private void amounts(
      String table, FallReport fall, String id, String what, Amount pressure, Amount volume)
      throws IOException {
    amount(table, fall, id, what, "pressure", Unit.BAR, pressure);
    amount(table, fall, id, what, "volume", Unit.MILLILITRE, volume);
  }

  private void amount(
      String table,
      FallReport fall,
      String id,
      String what,
      String quantity,
      Unit unit,
      Amount amount)
      throws IOException {
    printer.printRecord(
        table,
        SpreadsheetText.harmless(fall.test()),
        id,
        what,
        quantity,
        unit.symbol(),
        FigureTable.figure(unit.fromSi(amount.mean())),
        FigureTable.figure(unit.fromSi(amount.low())),
        FigureTable.figure(unit.fromSi(amount.high())));
  }

  private void row(String... cells) throws IOException {
    for (String cell : cells) {
      printer.print(cell);
    }
    printer.print("");
    printer.print("");
    printer.println();
  }
}
