package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.InjectorReport;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.message.Message;
import holdcurve.ui.window.frame.Sign;
import java.util.List;

/**
 * The most important of what a sheet says: a word, and the sentences that bear it out.
 *
 * @param style class in the stylesheet
 * @param said which of the report's sentences stand beside the word
 */
record SheetHeadline(String style, Sign sign, String word, List<Message> said) {
  static SheetHeadline of(BenchReport report) {
    List<InjectorReport> all = report.injectors();
    List<Message> verdict = report.verdict();
    if (all.stream().anyMatch(i -> isOut(i.standing()))) {
      return new SheetHeadline("leak", Sign.CROSS, "Out of line", verdict.subList(0, 1));
    }
    if (all.stream().anyMatch(i -> !i.troubles().isEmpty())) {
      return new SheetHeadline("leak", Sign.CROSS, "Not all fit", naming(all, verdict));
    }
    if (all.stream().allMatch(i -> i.standing() == Standing.NOT_MEASURED)) {
      return new SheetHeadline("open", Sign.QUESTION, "No flows", verdict.subList(0, 1));
    }
    if (all.stream().anyMatch(i -> i.standing() != Standing.NOT_MEASURED && !i.sure())) {
      return new SheetHeadline("open", Sign.QUESTION, "Not settled", verdict.subList(1, 2));
    }
    return new SheetHeadline("sound", Sign.TICK, "In line", verdict.subList(0, 1));
  }

  private static boolean isOut(Standing standing) {
    return standing == Standing.OUT_OF_LINE || standing == Standing.FAR_OUT;
  }

  private static List<Message> naming(List<InjectorReport> all, List<Message> verdict) {
    return verdict.stream()
        .filter(
            message ->
                all.stream()
                    .filter(i -> !i.troubles().isEmpty())
                    .anyMatch(i -> message.toString().startsWith("Injector " + i.id() + " ")))
        .toList();
  }

  /** What else the report says. */
  static List<Message> rest(BenchReport report) {
    List<Message> said = of(report).said();
    return report.verdict().stream().filter(message -> !said.contains(message)).toList();
  }
}
