package holdcurve.ui.command;

import holdcurve.infer.Ranking;
import holdcurve.infer.Reason;
import holdcurve.infer.Reasons;
import holdcurve.infer.Suspect;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** What speaks for and against the likeliest suspects. */
final class ReasonsText {
  private static final int MOST = 5;
  private static final double MOST_TIMES = 1000;

  private ReasonsText() {}

  static void print(Ranking ranking, PrintWriter out) {
    for (Reasons reasons : ranking.reasons()) {
      Suspect suspect = ranking.suspect(reasons.suspect());
      Suspect rival = ranking.suspect(reasons.rival());
      Wrapped.print(out, "", title(suspect) + ", rather than " + title(rival));
      print("speaks for it:", reasons.reasons().stream().filter(Reason::speaksFor).toList(), out);
      print(
          "speaks against it:",
          reasons.reasons().stream().filter(reason -> !reason.speaksFor()).toList(),
          out);
      out.println();
    }
  }

  private static String title(Suspect suspect) {
    String where = suspect.where().isEmpty() ? "" : " (" + suspect.where() + ")";
    return suspect.name() + where;
  }

  private static void print(String heading, List<Reason> reasons, PrintWriter out) {
    out.println("  " + heading + (reasons.isEmpty() ? " nothing to speak of" : ""));
    for (Reason reason : reasons.stream().limit(MOST).toList()) {
      Wrapped.print(out, "    - ", reason.what() + " (" + times(reason.weight()) + ")");
    }
    if (reasons.size() > MOST) {
      out.printf(Locale.ROOT, "    - and %d lesser ones%n", reasons.size() - MOST);
    }
  }

  private static String times(double weight) {
    double times = Math.exp(Math.abs(weight));
    String side = weight > 0 ? "likelier" : "less likely";
    return times > MOST_TIMES
        ? String.format(Locale.ROOT, "over %.0f times %s", MOST_TIMES, side)
        : String.format(Locale.ROOT, times < 10 ? "%.1f times %s" : "%.0f times %s", times, side);
  }
}
