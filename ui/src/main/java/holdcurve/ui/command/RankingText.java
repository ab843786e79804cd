package holdcurve.ui.command;

import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
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
import holdcurve.record.job.WorkedOn;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A ranking as text for a terminal, 80 columns wide. */
public final class RankingText {
  /** Suspects below this probability are counted, not listed [-]. */
  private static final double LISTED = 0.005;

  /** Suspects of a short answer. */
  private static final int SHORT = 3;

  /** Petrol: common practice, about 30 drops to the millilitre. */
  private static final double DROPS_PER_MILLILITRE = 30;

  private RankingText() {}

  /** Prints verdict, what to do, suspects, yardsticks and notes. */
  public static void print(Ranking ranking, Job job, Printout out) {
    print(ranking, job, Optional.empty(), false, false, out);
  }

  /**
   * Likewise.
   *
   * @param before how the hold was before the last repair
   * @param full whether to list every suspect, where the fall went and what was understood
   * @param explain whether to say what speaks for and against the likeliest suspects
   */
  static void print(
      Ranking ranking,
      Job job,
      Optional<Message> before,
      boolean full,
      boolean explain,
      Printout out) {
    AnswerText.print(ranking.diagnosis(), out);
    before.ifPresent(
        said -> {
          out.wrapped("", said);
          out.println();
        });
    printSuspects(ranking, new WorkedOn(job), full ? Integer.MAX_VALUE : SHORT, out);
    printYardsticks(ranking, full, out);
    if (full) {
      printGroups(ranking, out);
      FallText.print(ranking, out);
    }
    if (explain) {
      ReasonsText.print(ranking, out);
    }
    printDone(job, ranking.job(), out);
    printNotes(ranking, job, full, out);
    if (!full) {
      out.println("--full shows every suspect, what made the needle fall, and what was assumed.");
    }
  }

  private static void printYardsticks(Ranking ranking, boolean full, Printout out) {
    String answer = out.said(ranking.verdict().words());
    ranking.diagnosis().yardsticks().stream()
        .map(out::said)
        .filter(said -> full || !answer.contains(said.substring(said.indexOf(": ") + 2)))
        .forEach(said -> Wrapped.print(out, "", said));
    ranking.diagnosis().assumed().stream()
        .limit(full ? Integer.MAX_VALUE : 1)
        .forEach(said -> out.wrapped("", said));
    if (full) {
      ranking.diagnosis().reasons().forEach(said -> out.wrapped("", said));
    }
  }

  /** What the answer rests on. */
  private static void printDone(Job job, String title, Printout out) {
    Wrapped.print(out, "", "Job: " + Titles.shown(title) + ". " + tests(job));
    if (!job.findings().isEmpty()) {
      String found =
          SameNotes.together(job.findings().stream().map(Finding::message).map(out::said).toList())
              .stream()
              .map(RankingText::sentence)
              .collect(Collectors.joining(" "));
      Wrapped.print(out, "", "Found: " + found);
    }
    out.println();
  }

  private static String tests(Job job) {
    int count = job.tests().size();
    return (count == 1 ? "1 hold test. " : count + " hold tests. ")
        + job.tests().stream().map(RankingText::test).collect(Collectors.joining(" "));
  }

  private static String test(HoldTest test) {
    String clamps =
        test.clamped().isEmpty() ? "no clamp" : PartName.all(test.clamped()) + " clamped";
    return sentence(String.format(Locale.ROOT, "%s, %.0f min", clamps, test.log().holdSpan() / 60));
  }

  private static void printSuspects(Ranking ranking, WorkedOn worked, int most, Printout out) {
    out.println("  Chance  Suspect");
    int unlisted = 0;
    int listed = 0;
    long shown = 0;
    Set<String> said = new HashSet<>();
    for (Suspect suspect : ranking.suspects()) {
      if (suspect.probability() < LISTED || listed++ >= most) {
        unlisted++;
      } else {
        shown += Math.round(100 * suspect.probability());
        said.add(suspect.id());
        out.printf(Locale.ROOT, "  %5s   %s%n", chance(suspect.probability()), suspect.name());
        if (!suspect.where().isEmpty()) {
          Wrapped.print(out, "          ", "at: " + suspect.where());
        }
        worked
            .last(suspect.id())
            .ifPresent(
                repair ->
                    Wrapped.print(out, "          ", "already worked on, " + repair.date() + "."));
        suspect.size().ifPresent(size -> Wrapped.print(out, "          ", size(size, out)));
      }
    }
    if (unlisted > 0) {
      String together = shown >= 100 ? "<1 %" : 100 - shown + " %";
      long fit = fitting(ranking).stream().filter(id -> !said.contains(id)).count();
      out.println(
          fit == 0
              ? "  " + unlisted + " less likely, " + together + " together"
              : "  "
                  + fit
                  + " more fit, "
                  + (unlisted - fit)
                  + " hardly fit, "
                  + together
                  + " together");
    }
    out.println();
  }

  /** Ids of the causes that the answer counts as fitting; none where it names one alone. */
  private static List<String> fitting(Ranking ranking) {
    return ranking.groups().stream()
        .max(Comparator.comparingDouble(SuspectGroup::probability))
        .filter(group -> group.probability() >= ranking.suspects().get(0).probability())
        .map(SuspectGroup::suspects)
        .orElse(List.of());
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
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
        out.println("These tests cannot separate (" + chance(group.probability()) + " together):");
        group.suspects().forEach(id -> Wrapped.print(out, "  - ", ranking.suspect(id).name()));
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
      out.println(full ? "Assumed, and read from the files:" : "Mind:");
      SameNotes.together(notes).forEach(note -> Wrapped.print(out, "  - ", note));
    }
  }
}
