package holdcurve.ui.report;

import holdcurve.attribution.Amount;
import holdcurve.attribution.FallReport;
import holdcurve.attribution.FallShare;
import holdcurve.circuit.Unit;
import holdcurve.infer.Ranking;
import holdcurve.job.HoldTest;
import holdcurve.text.Rounded;
import java.util.List;
import java.util.Locale;

/** Where the fall of a hold went. */
final class FallSection {
  /** Parts that never reach this are left out [Pa]. */
  private static final double SHOWN = 500;

  private FallSection() {}

  /** Empty where that wasn't asked. */
  static Html html(Ranking ranking, HoldTest test) {
    return ranking.falls().stream()
        .filter(fall -> fall.test().equals(test.id()))
        .findFirst()
        .map(FallSection::html)
        .orElse(Html.NOTHING);
  }

  private static Html html(FallReport fall) {
    List<List<Html>> rows =
        fall.shares().stream()
            .filter(share -> reaches(share.pressure()))
            .map(FallSection::row)
            .toList();
    String sum =
        String.format(
            Locale.ROOT,
            "Where the fall of %.2f bar in %.0f min went, with the range that holds it nine times"
                + " in ten",
            Unit.BAR.fromSi(fall.fall()),
            (fall.to() - fall.from()) / 60);
    return Html.table("falls", List.of(sum, "bar", "mL"), rows);
  }

  private static boolean reaches(Amount pressure) {
    return Math.max(Math.abs(pressure.low()), Math.abs(pressure.high())) >= SHOWN;
  }

  private static List<Html> row(FallShare share) {
    return List.of(
        Html.text(share.cause().title()),
        Html.text(amount(share.pressure(), Unit.BAR)),
        Html.text(amount(share.volume(), Unit.MILLILITRE)));
  }

  private static String amount(Amount amount, Unit unit) {
    return String.format(
        Locale.ROOT,
        "%.2f (%.2f to %.2f)",
        hundredths(amount.mean(), unit),
        hundredths(amount.low(), unit),
        hundredths(amount.high(), unit));
  }

  private static double hundredths(double si, Unit unit) {
    return Rounded.hundredths(unit.fromSi(si));
  }
}
