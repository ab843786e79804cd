package holdcurve.ui.report;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.text.Rounded;
import holdcurve.inference.answer.Ranking;
import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.HoldTest;
import java.util.List;
import java.util.Locale;

/** Where the fall of a hold went. */
final class FallSection {
  /** Parts that never reach this are left out [Pa]. */
  private static final double SHOWN = 500;

  private FallSection() {}

  /** Empty where that wasn't asked. */
  static Html html(Ranking ranking, HoldTest test, PressureUnit unit) {
    return ranking.falls().stream()
        .filter(fall -> fall.test().equals(test.id()))
        .findFirst()
        .map(fall -> html(fall, unit))
        .orElse(Html.NOTHING);
  }

  private static Html html(FallReport fall, PressureUnit unit) {
    List<List<Html>> rows = fall.shown(SHOWN, unit).stream().map(part -> row(part, unit)).toList();
    String sum =
        Message.of(
                "What made the needle fall %s in %.0f min (90 %% range in brackets)",
                Message.pressure(fall.fall(unit)), (fall.to() - fall.from()) / 60)
            .in(unit);
    return Html.table("falls", List.of(sum, unit.symbol(), "mL"), rows);
  }

  private static List<Html> row(FallReport.Shown part, PressureUnit unit) {
    return List.of(
        Html.text(part.title()),
        Html.text(pressures(part.mean(), part.share().pressure(), unit)),
        Html.text(amount(part.share().volume(), Unit.MILLILITRE)));
  }

  private static String pressures(double mean, Amount amount, PressureUnit unit) {
    return number(mean, unit)
        + " ("
        + number(amount.low(), unit)
        + " to "
        + number(amount.high(), unit)
        + ")";
  }

  /** Nought has no sign. */
  private static String number(double pascals, PressureUnit unit) {
    String number = Message.of("%s", Message.number(pascals)).in(unit);
    return number.matches("-0(\\.0+)?") ? number.substring(1) : number;
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
