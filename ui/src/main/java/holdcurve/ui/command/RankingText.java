package holdcurve.ui.command;

import holdcurve.common.number.Interval;
import holdcurve.common.text.Titles;
import holdcurve.inference.answer.FaultSize;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.physics.circuit.Unit;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Locale;

/** A ranking as text for a terminal, 80 columns wide. */
public final class RankingText {
  /** Suspects below this probability are counted, not listed [-]. */
  private static final double LISTED = 0.005;

  /** Suspects of a short answer. */
  private static final int SHORT = 3;

  /** Petrol: common practice, about 30 drops to the millilitre. */
  private static final double DROPS_PER_MILLILITRE = 30;

  private RankingText() {}

  /** Prints verdict, suspects, groups, what to do and notes. */
  public static void print(Ranking ranking, Job job, Printout out) {
    print(ranking, job, false, false, out);
  }

  /**
   * Likewise.
   *
   * @param full whether to list every suspect, where the fall went and what was understood
   * @param explain whether to say what speaks for and against the likeliest suspects
   */
  static void print(Ranking ranking, Job job, boolean full, boolean explain, Printout out) {
    out.println(Titles.shown(ranking.job()));
    Wrapped.print(out, "", tests(job));
    if (!job.findings().isEmpty()) {
      List<String> found = job.findings().stream().map(Finding::message).map(out::said).toList();
      Wrapped.print(out, "", "Found: " + String.join("; ", found));
    }
    out.println();
    AnswerText.print(ranking.diagnosis(), out);
    printSuspects(ranking, full ? Integer.MAX_VALUE : SHORT, out);
    if (full) {
      printGroups(ranking, out);
      FallText.print(ranking, out);
    }
    if (explain) {
      ReasonsText.print(ranking, out);
    }
    printYardsticks(ranking, full, out);
    printNotes(ranking, job, full, out);
    if (!full) {
      out.println("--full shows every suspect, where the fall went and what was assumed.");
    }
  }

  private static void printYardsticks(Ranking ranking, boolean full, Printout out) {
    ranking.diagnosis().yardsticks().forEach(said -> out.wrapped("", said));
    ranking.diagnosis().assumed().stream()
        .limit(full ? Integer.MAX_VALUE : 1)
        .forEach(said -> out.wrapped("", said));
    if (full) {
      ranking.diagnosis().reasons().forEach(said -> out.wrapped("", said));
    }
    out.println();
  }

  private static String tests(Job job) {
    List<String> said = job.tests().stream().map(RankingText::test).toList();
    return (said.size() == 1 ? "1 hold test: " : said.size() + " hold tests: ")
        + String.join("; ", said);
  }

  private static String test(HoldTest test) {
    String clamps =
        test.clamped().isEmpty() ? "no clamp" : String.join(" and ", test.clamped()) + " clamped";
    return String.format(Locale.ROOT, "%s, %.0f min", clamps, test.log().holdSpan() / 60);
  }

  private static void printSuspects(Ranking ranking, int most, Printout out) {
    out.println("  Chance  Suspect");
    int unlisted = 0;
    int listed = 0;
    for (Suspect suspect : ranking.suspects()) {
      if (suspect.probability() < LISTED || listed++ >= most) {
        unlisted++;
      } else {
        out.printf(Locale.ROOT, "  %5s   %s%n", chance(suspect.probability()), suspect.name());
        if (!suspect.where().isEmpty()) {
          Wrapped.print(out, "          ", "at: " + suspect.where());
        }
        suspect.size().ifPresent(size -> Wrapped.print(out, "          ", size(size, out)));
      }
    }
    if (unlisted > 0) {
      double rest =
          ranking.suspects().stream()
              .mapToDouble(Suspect::probability)
              .skip(ranking.suspects().size() - unlisted)
              .sum();
      out.printf(Locale.ROOT, "  %d more, %s together%n", unlisted, chance(rest));
    }
    out.println();
  }

  private static String chance(double p) {
    if (p > 0.995) {
      return ">99 %";
    }
    return p < 0.01 ? "<1 %" : Math.round(100 * p) + " %";
  }

  private static String size(FaultSize size, Printout out) {
    if (size.unit() == Unit.BAR) {
      return pressure(size, out);
    }
    Unit unit = size.unit();
    Interval v = size.value();
    String middle =
        String.format(
            Locale.ROOT,
            "%s: %s %s",
            out.said(size.words()),
            figure(unit.fromSi(v.middle())),
            unit.symbol());
    String range =
        v.low() < v.high()
            ? middle
                + String.format(
                    Locale.ROOT,
                    ", 90 %% range %s to %s",
                    figure(unit.fromSi(v.low())),
                    figure(unit.fromSi(v.high())))
            : middle;
    return size.isLeak() ? range + drops(unit.fromSi(v.middle())) : range;
  }

  private static String pressure(FaultSize size, Printout out) {
    Interval v = size.value();
    String middle = out.said(size.words()) + ": " + out.pressure(v.middle());
    return v.low() < v.high()
        ? middle + ", 90 % range " + out.number(v.low()) + " to " + out.number(v.high())
        : middle;
  }

  private static String drops(double millilitresPerMinute) {
    double drops = millilitresPerMinute * DROPS_PER_MILLILITRE;
    return drops < 1
        ? String.format(Locale.ROOT, " (a drop every %.1f min)", 1 / drops)
        : String.format(
            Locale.ROOT, " (about %.0f drop%s a minute)", drops, drops < 1.5 ? "" : "s");
  }

  private static String figure(double value) {
    return String.format(
        Locale.ROOT,
        Math.abs(value) >= 10 ? "%.0f" : Math.abs(value) >= 1 ? "%.1f" : "%.2f",
        value);
  }

  private static void printGroups(Ranking ranking, Printout out) {
    for (SuspectGroup group : ranking.groups()) {
      if (group.probability() > 0.05) {
        String names =
            String.join(
                "; ", group.suspects().stream().map(id -> ranking.suspect(id).name()).toList());
        Wrapped.print(
            out,
            "",
            "Can't be told apart (" + chance(group.probability()) + " together): " + names + ".");
        Wrapped.print(out, "  ", group.reason());
        out.println();
      }
    }
  }

  /** What the files were understood to say is left out of a short answer. */
  private static void printNotes(Ranking ranking, Job job, boolean full, Printout out) {
    List<String> notes =
        ranking.notes().stream()
            .filter(note -> full || !job.understood().contains(note))
            .map(out::said)
            .toList();
    if (!notes.isEmpty()) {
      out.println(full ? "What was understood and assumed:" : "Mind:");
      notes.forEach(note -> Wrapped.print(out, "  - ", note));
    }
  }
}
