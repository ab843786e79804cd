package holdcurve.ui.command;

import holdcurve.advice.plan.Branch;
import holdcurve.advice.plan.Information;
import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.PlannedTest;
import holdcurve.advice.plan.Procedure;
import holdcurve.common.message.Message;
import holdcurve.common.text.Titles;
import holdcurve.inference.answer.NextStep;
import holdcurve.inference.answer.Ranking;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A plan as text for a terminal, 80 columns wide. */
final class PlanText {
  private static final double WORTH_NAMING = 0.05;

  /** Chances below this are left out [-]. */
  private static final double LEAST_SAID = 0.01;

  /** From here a test tells much [bit]. */
  private static final double WORTH_MUCH = 0.5;

  /** Below this no test is worth its time [bit]. */
  private static final double WORTH_DOING = 0.1;

  private static final String ONE_WET = " wet, the others dry";

  private final Printout out;

  PlanText(Printout out) {
    this.out = out;
  }

  /** The answer, the test to do now with all it takes, and what else could be done. */
  void print(Plan plan, Ranking ranking, Optional<Message> before, boolean all) {
    NextStep next = ranking.diagnosis().next();
    List<PlannedTest> shown = shown(plan, next, all);
    boolean leads =
        next.kind() == NextStep.Kind.TEST
            && shown.stream().anyMatch(test -> test.procedure().id().equals(next.procedure()));
    if (leads) {
      AnswerText.printWithoutCautions(ranking.diagnosis(), out);
    } else {
      AnswerText.print(ranking.diagnosis(), out);
    }
    before.ifPresent(
        said -> {
          out.wrapped("", said);
          out.println();
        });
    if (shown.isEmpty()) {
      Wrapped.print(
          out,
          "",
          next.kind() == NextStep.Kind.REPAIR
              ? "Repair first; no other test is worth the time."
              : "No further test would tell much.");
      out.println();
    } else if (!leads && next.kind() != NextStep.Kind.ASK) {
      out.println("If you want to be surer:");
      out.println();
    }
    shown.forEach(this::detail);
    out.println("All tests for " + Titles.shown(plan.job()) + ":");
    out.println("  Tells      Minutes  Test");
    plan.tests().stream()
        .sorted(Comparator.comparing(test -> worth(test.information())))
        .forEach(this::line);
    out.println();
    if (!all) {
      useless(plan.tests());
    }
    plan.notes().forEach(note -> Wrapped.print(out, "  - ", note));
  }

  /** Tests whose steps are printed: what is to be done next, else the first that is worth it. */
  private static List<PlannedTest> shown(Plan plan, NextStep next, boolean all) {
    Worth least = next.kind() == NextStep.Kind.REPAIR ? Worth.MUCH : Worth.SOMETHING;
    return plan.tests().stream()
        .filter(
            test ->
                all
                    || test.procedure().id().equals(next.procedure())
                    || next.procedure().isEmpty()
                        && worth(test.information()).compareTo(least) <= 0)
        .limit(all ? plan.tests().size() : 1)
        .toList();
  }

  /** How much a test tells, in words: a bit halves the number of causes. */
  private enum Worth {
    MUCH,
    SOMETHING,
    LITTLE;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static Worth worth(Information information) {
    double bits = information.bits();
    return bits >= WORTH_MUCH ? Worth.MUCH : bits >= WORTH_DOING ? Worth.SOMETHING : Worth.LITTLE;
  }

  /** Why the tests that tell next to nothing do so; those of one reason together. */
  private void useless(List<PlannedTest> tests) {
    Map<String, List<String>> reasons = new LinkedHashMap<>();
    tests.stream()
        .filter(test -> worth(test.information()) == Worth.LITTLE)
        .forEach(
            test ->
                reasons
                    .computeIfAbsent(test.reason(), reason -> new ArrayList<>())
                    .add(test.procedure().name()));
    if (!reasons.isEmpty()) {
      out.println("Tests that would tell little, and why:");
      reasons.forEach(
          (reason, names) -> {
            names.forEach(name -> Wrapped.print(out, "  ", name));
            Wrapped.print(out, "      ", reason);
          });
      out.println();
    }
  }

  private void line(PlannedTest test) {
    Procedure procedure = test.procedure();
    out.printf(
        Locale.ROOT,
        "  %-9s  %7.0f  %s%n",
        worth(test.information()).word(),
        procedure.minutes(),
        procedure.name());
  }

  private void detail(PlannedTest test) {
    Procedure procedure = test.procedure();
    out.printf(Locale.ROOT, "%s (%.0f min)%n", procedure.name(), procedure.minutes());
    Wrapped.print(out, "  ", test.reason());
    out.println();
    procedure.cautions().forEach(caution -> Wrapped.print(out, "  ! ", caution));
    for (int i = 0; i < procedure.steps().size(); i++) {
      out.wrapped("  " + (i + 1) + ". ", procedure.steps().get(i));
    }
    out.println();
    alike(test.branches()).forEach(this::branch);
    if (!test.branches().isEmpty()) {
      double left = 1 - test.branches().stream().mapToDouble(Branch::probability).sum();
      if (left > LEAST_SAID) {
        out.println("  Anything else (" + chance(left) + "): enter it, and rank again.");
      }
      out.println();
    }
  }

  /** Outcomes after which the same would be believed, in one. */
  private static Collection<List<Branch>> alike(List<Branch> branches) {
    return branches.stream()
        .collect(Collectors.groupingBy(PlanText::believed, LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  private static List<String> believed(Branch branch) {
    return branch.believed().stream()
        .filter(share -> share.probability() > WORTH_NAMING)
        .map(share -> share.id() + chance(share.probability()))
        .toList();
  }

  private void branch(List<Branch> branches) {
    double together = branches.stream().mapToDouble(Branch::probability).sum();
    String outcomes = outcomes(branches.stream().map(Branch::said).map(out::said).toList());
    Wrapped.print(
        out,
        "  ",
        "If you find "
            + outcomes
            + " ("
            + chance(together)
            + (branches.size() > 1 ? " together" : "")
            + "):");
    List<Branch.Share> named =
        branches.get(0).believed().stream()
            .filter(share -> share.probability() > WORTH_NAMING)
            .limit(4)
            .toList();
    named.forEach(share -> share(share.probability(), share.name()));
    double left = 1 - named.stream().mapToDouble(Branch.Share::probability).sum();
    if (left > WORTH_NAMING) {
      share(left, "other causes");
    }
  }

  private void share(double probability, String name) {
    Wrapped.print(out, String.format(Locale.ROOT, "      %5s  ", chance(probability)), name);
  }

  /** "a, b or c"; of places that are wet "one of a, b and c wet, the others dry". */
  private static String outcomes(List<String> all) {
    if (all.size() > 1 && all.stream().allMatch(one -> one.endsWith(ONE_WET))) {
      List<String> places =
          all.stream().map(one -> one.substring(0, one.length() - ONE_WET.length())).toList();
      return "only one of " + listed(places, "and") + " wet";
    }
    return listed(all, "or");
  }

  private static String listed(List<String> all, String last) {
    int end = all.size() - 1;
    return end == 0
        ? all.get(0)
        : String.join(", ", all.subList(0, end)) + " " + last + " " + all.get(end);
  }

  private static String chance(double p) {
    return p > 0.995 ? ">99 %" : p < 0.005 ? "<1 %" : Math.round(100 * p) + " %";
  }
}
