package holdcurve.ui.command;

import holdcurve.common.caution.Caution;
import holdcurve.inference.answer.Diagnosis;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The answer about a circuit for a terminal: what it is, what to do next, what to beware of. */
final class AnswerText {
  private AnswerText() {}

  static void print(Diagnosis diagnosis, Printout out) {
    printWithoutCautions(diagnosis, out);
    cautions(diagnosis).forEach(caution -> Wrapped.print(out, "  ! ", caution.text()));
    out.println();
  }

  /** Where the steps of what is to be done follow, with their cautions. */
  static void printWithoutCautions(Diagnosis diagnosis, Printout out) {
    out.wrapped("", diagnosis.verdict().words());
    String next = out.said(diagnosis.next().words());
    if (!next.isEmpty()) {
      Wrapped.print(out, "", "Do next: " + next);
    }
    out.println();
  }

  /** Those of any work on the circuit round those of the step. */
  private static Set<Caution> cautions(Diagnosis diagnosis) {
    Set<Caution> all = new LinkedHashSet<>(List.of(Caution.PETROL));
    all.addAll(diagnosis.next().cautions());
    all.remove(Caution.LOCAL_CODES);
    all.add(Caution.LOCAL_CODES);
    return all;
  }
}
