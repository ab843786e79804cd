package holdcurve.ui.report;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.HoldTable;
import holdcurve.advice.check.RepairCheck;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Celsius;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Session;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was done and read, in order, and the curves. */
final class TestSections {
  private final Job job;
  private final RepairCheck check;
  private final PressureUnit unit;

  TestSections(JobReport report) {
    this.job = report.job();
    this.check = report.check();
    this.unit = report.unit();
  }

  private String pressure(double pascals) {
    return Message.of("%s", Message.pressure(pascals)).in(unit);
  }

  Html record() {
    List<List<Html>> rows = new ArrayList<>();
    check.timeline().earlier().forEach(session -> session.tests().forEach(t -> rows.add(row(t))));
    check.timeline().checked().tests().forEach(test -> rows.add(row(test)));
    return Html.all(
        Html.of("h2", "Tests"),
        Html.table(
            "tests", List.of("Date", "Test", "Clamped", "Watched", "Start", "End", "Notes"), rows),
        list("Repairs", job.upkeep().repairs().stream().map(TestSections::words).toList()),
        list("Seen, counted and drawn off", job.findings().stream().map(this::words).toList()));
  }

  private List<Html> row(HoldTest test) {
    List<Reading> hold = test.log().hold();
    String temperature =
        test.fuelTemperature().isPresent()
            ? Math.round(Celsius.of(test.fuelTemperature().getAsDouble())) + " °C"
            : "";
    return Stream.of(
            test.date(),
            test.id(),
            test.clamped().isEmpty() ? "nothing" : String.join(", ", test.clamped()),
            ReportFigures.minutes(test.log().holdSpan()),
            pressure(hold.get(0).pressure()),
            pressure(hold.get(hold.size() - 1).pressure()),
            (temperature + " " + test.notes()).strip())
        .map(Html::text)
        .toList();
  }

  private static String words(Repair repair) {
    return Stream.of(repair.date().toString(), repair.part(), repair.note())
        .filter(word -> !word.isEmpty())
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private String words(Finding finding) {
    return finding.inDatedWords(unit)
        + finding.test().map(test -> ", during '" + test + "'").orElse("");
  }

  private static Html list(String title, List<String> items) {
    return items.isEmpty()
        ? Html.NOTHING
        : Html.all(
            Html.of("h3", title),
            Html.of("ul", Html.all(items.stream().map(item -> Html.of("li", item)).toList())));
  }

  Html curves() {
    List<Html> drawings = new ArrayList<>();
    List<HoldTest> tests = check.timeline().checked().tests();
    for (int i = 0; i < tests.size(); i++) {
      drawings.add(checked(i));
    }
    before().ifPresent(session -> session.tests().forEach(test -> drawings.add(before(test))));
    return Html.all(Html.of("h2", "Curves"), Html.all(drawings));
  }

  private Optional<Session> before() {
    List<Session> earlier = check.timeline().earlier();
    return check.before().map(ranking -> earlier.get(earlier.size() - 1));
  }

  private Html checked(int i) {
    HoldTable table = HoldTable.of(check, i);
    String legend =
        "Dots: readings. Band and line: nine in ten readings, and the middle, of a sound circuit of"
            + " this description."
            + (table.remembered().isPresent()
                ? " Dashed: likewise by this circuit's own history."
                : "")
            + table
                .last()
                .map(last -> " Crosses: " + (last.date() + " " + last.id()).strip() + ".")
                .orElse("")
            + suspected()
                .map(suspect -> " Dotted: the middle, if this is true: " + suspect.name() + ".")
                .orElse("");
    return figure(
        title(table.test()),
        HoldDrawing.of(
            table.test(),
            Optional.of(table.described()),
            table.remembered(),
            table.last(),
            curve(suspected(), table.test()),
            unit),
        Html.all(
            Html.of("p.small", legend),
            mark(table.test()),
            FallSection.html(check.ranking(), table.test(), unit)));
  }

  /** What leads, where the verdict is that something is wrong. */
  private Optional<Suspect> suspected() {
    return check.verdict().kind() == CheckVerdict.Kind.FAULTY
        ? check.ranking().suspects().stream().filter(s -> !s.isNone()).findFirst()
        : Optional.empty();
  }

  private static Optional<HoldCurve> curve(Optional<Suspect> suspect, HoldTest test) {
    return suspect.stream()
        .flatMap(one -> one.curves().stream())
        .filter(curve -> curve.test().equals(test.id()))
        .findFirst();
  }

  /** A hold from before, with what its likeliest explanation foretells. */
  private Html before(HoldTest test) {
    Ranking ranking = check.before().orElseThrow();
    Suspect first = ranking.suspects().get(0);
    Optional<HoldCurve> curve = curve(Optional.of(first), test);
    return figure(
        title(test),
        HoldDrawing.of(test, curve, Optional.empty(), Optional.empty(), Optional.empty(), unit),
        Html.all(
            Html.of(
                "p.small",
                "Dots: readings. Band and line: nine in ten readings, and the middle, if this is"
                    + " true: "
                    + first.name()
                    + "."),
            FallSection.html(ranking, test, unit)));
  }

  private static Html figure(String title, Html drawing, Html words) {
    return Html.of("div.figure", Html.of("h3", title), drawing, words);
  }

  private static String title(HoldTest test) {
    String clamps =
        test.clamped().isEmpty()
            ? "nothing clamped"
            : String.join(" and ", test.clamped()) + " clamped";
    return (test.date() + " " + test.id()).strip() + ", " + clamps;
  }

  private Html mark(HoldTest test) {
    return Html.all(
        check.marks().stream()
            .filter(mark -> mark.test().equals(test.id()))
            .map(mark -> Html.of("p", sentence(mark)))
            .toList());
  }

  private String sentence(PassMark mark) {
    String limit =
        "Pass limit ("
            + (job.upkeep().passStated() ? "set for this job" : "common practice")
            + ") "
            + pressure(check.limit().pressure())
            + " after "
            + ReportFigures.minutes(check.limit().time())
            + ": ";
    return switch (mark.outcome()) {
      case PASSES -> limit + "passes with " + pressure(mark.reading()) + ".";
      case WITHIN_GAUGE_ERROR ->
          limit + pressure(mark.reading()) + ", below it by less than the gauge may be off.";
      case FAILS -> limit + "does not pass with " + pressure(mark.reading()) + ".";
      case TOO_SHORT -> limit + "the hold ended before.";
    };
  }
}
