package holdcurve.ui.command;

import holdcurve.infer.Ranking;
import holdcurve.plan.Branch;
import holdcurve.plan.Information;
import holdcurve.plan.Plan;
import holdcurve.plan.PlannedTest;
import holdcurve.plan.Procedure;
import java.io.PrintWriter;
import java.util.Locale;

/** A plan as text for a terminal, 80 columns wide. */
final class PlanText {
  private static final double WORTH_NAMING = 0.05;

  /** Below this no test is worth its time [bit]. */
  private static final double WORTH_DOING = 0.1;

  private final PrintWriter out;

  PlanText(PrintWriter out) {
    this.out = out;
  }

  void print(Plan plan, Ranking ranking, boolean all) {
    out.println(plan.job());
    Wrapped.print(out, "", ranking.verdict().sentence());
    out.println();
    out.printf(
        Locale.ROOT,
        "Still open: %.2f bits about which suspect it is (0 is certain, 1 is heads or tails).%n%n",
        plan.open());
    out.println("  Worth, bits    Minutes  Test");
    plan.tests().forEach(this::line);
    out.println();
    boolean worth = plan.tests().get(0).information().bits() >= WORTH_DOING;
    if (!worth) {
      out.println("None of them would tell much more.");
      out.println();
    }
    plan.tests().stream().limit(all ? plan.tests().size() : worth ? 1 : 0).forEach(this::detail);
    plan.notes().forEach(note -> Wrapped.print(out, "  - ", note));
  }

  private void line(PlannedTest test) {
    Procedure procedure = test.procedure();
    out.printf(
        Locale.ROOT,
        "  %-14s %4.0f     %s%n",
        worth(test.information()),
        procedure.minutes(),
        procedure.name());
  }

  private static String worth(Information information) {
    return String.format(Locale.ROOT, "%.2f ± %.2f", information.bits(), information.error());
  }

  private void detail(PlannedTest test) {
    Procedure procedure = test.procedure();
    out.printf(Locale.ROOT, "%s (%.0f min)%n", procedure.name(), procedure.minutes());
    Wrapped.print(out, "  ", test.reason());
    out.println();
    procedure.cautions().forEach(caution -> Wrapped.print(out, "  ! ", caution));
    for (int i = 0; i < procedure.steps().size(); i++) {
      Wrapped.print(out, "  " + (i + 1) + ". ", procedure.steps().get(i));
    }
    out.println();
    test.branches().forEach(this::branch);
    if (!test.branches().isEmpty()) {
      out.println();
    }
  }

  private void branch(Branch branch) {
    Wrapped.print(
        out, "  ", "If it shows " + branch.outcome() + " (" + chance(branch.probability()) + "):");
    branch.believed().stream()
        .filter(share -> share.probability() > WORTH_NAMING)
        .limit(4)
        .forEach(
            share ->
                Wrapped.print(
                    out,
                    "      ",
                    String.format(
                        Locale.ROOT, "%5s  %s", chance(share.probability()), share.name())));
  }

  private static String chance(double p) {
    return p > 0.995 ? ">99 %" : p < 0.005 ? "<1 %" : Math.round(100 * p) + " %";
  }
}
