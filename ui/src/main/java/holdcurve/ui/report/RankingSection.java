package holdcurve.ui.report;

import holdcurve.advice.check.RepairCheck;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Chance;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import java.util.List;

/** Who is suspected, now and before. */
final class RankingSection {
  /** Suspects below this probability are counted, not listed [-]. */
  private static final double LISTED = 0.01;

  /** Groups below this probability are not worth a sentence [-]. */
  private static final double SAID = 0.05;

  private final RepairCheck check;
  private final PressureUnit unit;

  RankingSection(JobReport report) {
    this.check = report.check();
    this.unit = report.unit();
  }

  Html html() {
    String now = check.before().isPresent() ? "Likely causes, checked tests" : "Likely causes";
    return Html.all(
        check
            .before()
            .map(before -> section("Likely causes, tests before", before))
            .orElse(Html.NOTHING),
        section(now, check.ranking()));
  }

  private Html section(String title, Ranking ranking) {
    List<Suspect> listed =
        ranking.suspects().stream().filter(s -> s.probability() >= LISTED).toList();
    int rest = ranking.suspects().size() - listed.size();
    return Html.all(
        Html.of(
            "div.together",
            Html.of("h2", title),
            Html.of("p", ranking.verdict().words().in(unit)),
            Html.table(
                "causes",
                List.of("Chance", "Cause", "Where", "How much, 90 % range"),
                listed.stream().map(this::row).toList()),
            rest > 0
                ? Html.of("p.small", rest + (rest == 1 ? " other" : " others") + " under 1 % each.")
                : Html.NOTHING),
        Html.all(
            ranking.groups().stream()
                .filter(group -> group.probability() >= SAID)
                .map(group -> group(group, ranking))
                .toList()));
  }

  private List<Html> row(Suspect suspect) {
    return List.of(
        Html.text(Chance.words(suspect.probability())),
        Html.text(suspect.name()),
        Html.text(suspect.where()),
        Html.text(suspect.size().map(size -> ReportFigures.size(size, unit)).orElse("")));
  }

  private static Html group(SuspectGroup group, Ranking ranking) {
    String names =
        String.join("; ", group.suspects().stream().map(id -> ranking.suspect(id).name()).toList());
    return Html.of(
        "p.small",
        "These tests cannot separate ("
            + Chance.words(group.probability())
            + " together): "
            + names
            + ". "
            + group.reason());
  }
}
