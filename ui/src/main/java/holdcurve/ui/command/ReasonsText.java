package holdcurve.ui.command;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.answer.Suspect;
import java.util.List;
import java.util.Locale;

/** What speaks for and against the likeliest suspects. */
final class ReasonsText {
  private static final int MOST = 5;

  private ReasonsText() {}

  static void print(Ranking ranking, Printout out) {
    for (Reasons reasons : ranking.reasons()) {
      Suspect suspect = ranking.suspect(reasons.suspect());
      Suspect rival = ranking.suspect(reasons.rival());
      Wrapped.print(out, "", title(suspect) + ".");
      Wrapped.print(out, "  ", "Compared with: " + rival.name() + ".");
      print("for it:", reasons.reasons().stream().filter(Reason::speaksFor).toList(), out);
      print(
          "against it:",
          reasons.reasons().stream().filter(reason -> !reason.speaksFor()).toList(),
          out);
      out.println();
    }
  }

  private static String title(Suspect suspect) {
    String where = suspect.where().isEmpty() ? "" : " (" + suspect.where() + ")";
    return suspect.name() + where;
  }

  private static void print(String heading, List<Reason> reasons, Printout out) {
    out.println("  " + heading + (reasons.isEmpty() ? " nothing much" : ""));
    for (Reason reason : reasons.stream().limit(MOST).toList()) {
      Wrapped.print(out, "    - ", out.said(reason.said()) + " (" + reason.strength() + ")");
    }
    if (reasons.size() > MOST) {
      out.printf(Locale.ROOT, "    - and %d smaller ones%n", reasons.size() - MOST);
    }
  }
}
