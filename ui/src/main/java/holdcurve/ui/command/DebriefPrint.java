package holdcurve.ui.command;

import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import holdcurve.ui.practice.DebriefText;
import java.util.List;
import java.util.Locale;

/** A debrief as text for a terminal, 80 columns wide. */
final class DebriefPrint {
  private DebriefPrint() {}

  static void print(Exercise exercise, Debrief debrief, Printout out) {
    DebriefText text = new DebriefText(exercise, debrief);
    out.println();
    out.println("DEBRIEF");
    text.outcome().forEach(sentence -> Wrapped.print(out, "", sentence));
    table(debrief, out);
    text.steps().forEach(sentence -> Wrapped.print(out, "  - ", sentence));
    paragraphs(text.contrast().stream().map(out::said).toList(), out);
    paragraphs(text.lesson(), out);
    paragraphs(text.score(), out);
    out.flush();
  }

  private static void table(Debrief debrief, Printout out) {
    out.println();
    if (!debrief.lines().isEmpty()) {
      out.println("Your odds for the right answer, and the odds that your tests allow:");
    }
    for (Debrief.Line line : debrief.lines()) {
      Wrapped.print(out, "  ", line.step().words() + ": " + line.came() + ".");
      out.println(
          String.format(
              Locale.ROOT,
              "      yours, before %3.0f %%   after this test %3.0f %%   told %s",
              100 * line.learner(),
              100 * line.evidence(),
              DebriefText.told(line)));
      Wrapped.print(out, "      points at: ", line.leading());
    }
  }

  private static void paragraphs(List<String> sentences, Printout out) {
    if (!sentences.isEmpty()) {
      out.println();
      sentences.forEach(sentence -> Wrapped.print(out, "", sentence));
    }
  }
}
