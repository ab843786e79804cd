package holdcurve.ui.command;

import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.Correction;
import holdcurve.casebook.KnownAnswer;
import holdcurve.casebook.LearnedRates;
import holdcurve.common.message.PartName;
import holdcurve.record.job.Repair;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The case book as text for a terminal, 80 columns wide. */
final class CasesText {
  private static final int CAR = 44;

  /** Below the car. */
  private static final String INDENT = " ".repeat(12);

  private CasesText() {}

  /**
   * @param name name of the fault of an id
   */
  static void print(
      CaseBook book, List<CaseEntry> shown, UnaryOperator<String> name, PrintWriter out) {
    if (!shown.isEmpty()) {
      out.printf("%-10s  %-" + CAR + "s  %s%n", "Date", "Car", "State");
    }
    for (CaseEntry entry : shown) {
      out.printf(
          "%-10s  %-" + CAR + "s  %s%n",
          cut(entry.date(), 10),
          cut(entry.car(), CAR),
          entry.state().words());
      entry.answer().map(KnownAnswer::words).ifPresent(said -> Wrapped.print(out, INDENT, said));
      entry.repair().ifPresent(repair -> Wrapped.print(out, INDENT, repaired(entry, repair)));
      Correction said = book.correction(entry);
      if (!said.fault().isEmpty()) {
        Wrapped.print(out, INDENT, said(said, name));
      }
      if (!said.car().isEmpty()) {
        Wrapped.print(out, INDENT, "Car: " + said.car() + ".");
      }
      Wrapped.print(out, INDENT, entry.file().toString());
    }
    out.println(jobs(shown.size()) + (shown.size() < book.entries().size() ? " shown." : "."));
    if (!book.broken().isEmpty()) {
      out.println("Left out:");
      book.broken().forEach(one -> Wrapped.print(out, "  - ", one.file() + ": " + one.reason()));
    }
  }

  /** What the user says a case was. */
  static String said(Correction said, UnaryOperator<String> name) {
    return switch (said.fault()) {
      case "" -> "The job decides what it was.";
      case Correction.NONE -> "Counts as no confirmed fault.";
      default -> "It was: " + name.apply(said.fault()) + ".";
    };
  }

  private static String jobs(int count) {
    return count == 1 ? "1 job" : count + " jobs";
  }

  /** What was done, and whether the next hold proved it. */
  private static String repaired(CaseEntry entry, Repair repair) {
    String what =
        !repair.part().isEmpty()
            ? ", " + PartName.of(repair.part())
            : repair.note().isEmpty() ? "" : ", " + repair.note();
    return "Repaired "
        + repair.date()
        + what
        + (entry.repairs() > 1 ? ", the last of " + entry.repairs() : "")
        + ". "
        + switch (entry.proof()) {
          case PROVED -> "The next hold proved it.";
          case STILL_FAULTY -> "The next hold did not prove it.";
          case NOT_SETTLED -> "The next hold settles nothing.";
          case NOT_CHECKED -> "Held since, but not checked.";
          case NOT_HELD, NOTHING_REPAIRED -> "Not held since.";
        };
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1) + "…";
  }

  /** Rates in per cent of circuits. */
  static void print(LearnedRates learned, Map<String, Double> used, PrintWriter out) {
    out.printf("%-44s  %7s  %7s  %7s  %5s%n", "Fault", "Shipped", "Yours", "Used", "Cases");
    for (LearnedRates.Rate rate : learned.rates()) {
      out.printf(
          "%-44s  %7s  %7s  %7s  %5d%n",
          cut(rate.name(), 44),
          percent(rate.shipped()),
          percent(rate.learned()),
          percent(used.getOrDefault(rate.fault(), rate.shipped())),
          rate.cases());
    }
    out.println("Per cent of circuits that have the fault.");
    out.println(
        learned.cases() == 1
            ? "Yours rest on 1 confirmed case."
            : "Yours rest on " + learned.cases() + " confirmed cases.");
  }

  private static String percent(double rate) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * rate);
  }
}
