package holdcurve.ui.report;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheck;
import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.Message;
import holdcurve.common.text.Titles;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** The report as one HTML page that needs no other file. */
public final class ReportPage {
  private final Job job;
  private final RepairCheck check;
  private final JobReport report;

  private ReportPage(JobReport report) {
    this.report = report;
    this.job = report.job();
    this.check = report.check();
  }

  /** Well-formed HTML, encoded as UTF-8 when written. */
  public static String html(JobReport report) {
    return new ReportPage(report).html();
  }

  private String html() {
    return document(Titles.shown(job.title()) + " – hold test report", "", body());
  }

  /**
   * A page with the one stylesheet.
   *
   * @param kind class of the body; empty for the report of a job
   */
  static String document(String title, String kind, Html body) {
    Html head =
        Html.all(
            new Html("<meta charset=\"UTF-8\"/>\n"),
            Html.of("title", title),
            new Html("<style>\n" + style() + "</style>\n"));
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n"
        + Html.of("head", head).code()
        + Html.of(kind.isEmpty() ? "body" : "body." + kind, body).code()
        + "</html>\n";
  }

  private static String style() {
    try (InputStream in = ReportPage.class.getResourceAsStream("report.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Html body() {
    TestSections tests = new TestSections(report);
    RankingSection ranking = new RankingSection(report);
    return Html.all(
        Html.of("p.kicker", "Hold test report"),
        Html.of("h1", Titles.shown(job.title())),
        Html.of(
            "p.muted",
            "Circuit: "
                + Titles.shown(job.circuit().title())
                + ". Printed "
                + report.printed()
                + "."),
        verdict(),
        tests.record(),
        tests.curves(),
        ranking.html(),
        notes(),
        report
            .benchSheet()
            .map(sheet -> BenchSheetPaper.section(sheet, BenchLimits.shipped(), report.unit()))
            .orElse(Html.NOTHING),
        CircuitSection.html(job, check.places(), report.unit()),
        RefitSection.html(job.upkeep(), cautions()),
        signatures());
  }

  private Html verdict() {
    CheckVerdict verdict = check.verdict();
    String word =
        switch (verdict.kind()) {
          case HOLDS -> "Holds";
          case FAULTY -> "Not sound";
          case CANNOT_SAY -> "Not settled";
        };
    return Html.of(
        "div.verdict",
        Html.of("p.word", word),
        Html.of("p", verdict.words().in(report.unit())),
        Html.of("p", verdict.next().in(report.unit())));
  }

  private Html notes() {
    return Html.of(
        "div.together",
        Html.of("h2", "What it rests on"),
        Html.of(
            "p",
            "Gauge to "
                + round(job.gauge().range())
                + ", class "
                + Math.round(job.gauge().accuracyClass() * 1000) / 10.0
                + ", read to "
                + round(job.gauge().resolution())
                + ". Chances weigh every listed fault by how well it foretells the readings, with"
                + " hose stretch, fuel temperature, gauge error and seats left open within what is"
                + " usual. What the circuit description leaves unsaid takes its usual value with a"
                + " wide range."),
        Html.of(
            "ul.small",
            Html.all(
                check.notes().stream()
                    .map(note -> Html.of("li", note.in(report.unit())))
                    .toList())));
  }

  private String round(double pascals) {
    return Message.of("%s", Message.round(pascals)).in(report.unit());
  }

  private static Html cautions() {
    return Html.of(
        "div.caution",
        Html.of("p.word", "Before you work on it"),
        Html.all(
            Stream.concat(
                    Cautions.general().stream(),
                    Cautions.texts(Caution.DEAD_HEAD, Caution.CLAMPS, Caution.COLD_LAMP).stream())
                .map(text -> Html.of("p", text))
                .toList()));
  }

  private static Html signatures() {
    return Html.of(
        "table.sign",
        Html.of(
            "tr",
            Html.of("td", Html.of("p", "Tested by, date")),
            Html.of("td", Html.of("p", "Repair done by, date")),
            Html.of("td", Html.of("p", "Seen by the owner, date"))));
  }
}
